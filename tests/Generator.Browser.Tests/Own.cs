using System.Diagnostics;

namespace Generator.Browser.Tests;

/// <summary>The program, started as users start it, in a folder of its own; both end with the test.</summary>
internal sealed class Own : IDisposable
{
    /// <summary>Where it is built, beside these tests.</summary>
    public static readonly string Built = Path.GetFullPath(Path.Combine(AppContext.BaseDirectory, "..", "..", "Generator.Cli", new DirectoryInfo(AppContext.BaseDirectory).Name, "generator.dll"));

    private Process? program;

    public string Folder { get; } = Directory.CreateTempSubdirectory("generator-").FullName;

    /// <summary>Starts the page and gives its address; <c>GENERATOR_PROGRAM</c> names another build of the program.</summary>
    public async Task<string> Rehearse(params string[] file)
    {
        var other = Environment.GetEnvironmentVariable("GENERATOR_PROGRAM");
        string[] line = [.. other is null ? [Built] : (string[])[], "rehearse", .. file, "--no-browser"];
        program?.Dispose();
        program = Process.Start(new ProcessStartInfo(other ?? "dotnet", line) { WorkingDirectory = Folder, UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true })!;
        return await program.StandardOutput.ReadLineAsync() ?? throw new InvalidOperationException(await program.StandardError.ReadToEndAsync());
    }

    /// <summary>Ends it as a crash would.</summary>
    public async Task Kill()
    {
        program!.Kill();
        await program.WaitForExitAsync();
    }

    public void Dispose()
    {
        program?.Kill(entireProcessTree: true);
        program?.Dispose();
        Directory.Delete(Folder, recursive: true);
    }
}

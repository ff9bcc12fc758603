using System.Diagnostics;

namespace Generator.Benchmarks;

/// <summary>Other programs that the benchmarks ask.</summary>
internal static class Tools
{
    /// <summary>"commit 1234567", with a word where files differ from it; "this version" where nothing tells.</summary>
    public static string Commit()
    {
        try
        {
            var (code, commit) = Say("git", "-C", Places.Benchmarks, "rev-parse", "--short", "HEAD");
            var (_, changes) = Say("git", "-C", Places.Benchmarks, "status", "--porcelain", "--untracked-files=no", "--", "../src", "../technique-library");
            return code != 0 ? "this version" : $"commit {commit.Trim()}{(changes.Trim().Length > 0 ? " with changes" : string.Empty)}";
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return "this version";
        }
    }

    /// <summary>How another process of this program, or of a published one, is started with some words, its output to be read; also where it was started as <c>dotnet Generator.Benchmarks.dll</c>.</summary>
    public static ProcessStartInfo Again(string? program, IEnumerable<string> words)
    {
        var start = new ProcessStartInfo(program ?? Environment.ProcessPath!) { RedirectStandardOutput = true, UseShellExecute = false };
        var isRuntime = string.Equals(Path.GetFileNameWithoutExtension(start.FileName), "dotnet", StringComparison.OrdinalIgnoreCase);
        foreach (var word in isRuntime ? words.Prepend(Path.Combine(AppContext.BaseDirectory, "Generator.Benchmarks.dll")) : words)
        {
            start.ArgumentList.Add(word);
        }

        return start;
    }

    /// <summary>Runs a program to its end: its exit code and what it printed.</summary>
    public static (int Code, string Said) Say(string program, params string[] words)
    {
        var start = new ProcessStartInfo(program) { UseShellExecute = false, RedirectStandardOutput = true };
        foreach (var word in words)
        {
            start.ArgumentList.Add(word);
        }

        using var process = Process.Start(start)!;
        var said = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, said);
    }
}

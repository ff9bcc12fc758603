using System.Diagnostics;
using System.Globalization;

namespace Generator.Paperwork.Printing;

/// <summary>Prints and draws pages with a browser that is there already: Chromium or Chrome, without a window. It loads nothing from outside.</summary>
public sealed class Browser
{
    /// <summary>A pack takes some 4 s on an idle machine, and many times that on one that is busy with other work; only a browser that hangs takes this.</summary>
    private static readonly TimeSpan Longest = TimeSpan.FromMinutes(5);

    private static readonly string[] Names = ["chromium", "chromium-browser", "google-chrome-stable", "google-chrome", "chrome", "msedge"];

    private const string Prefix = "generator-print-";

    /// <summary>A file that whoever prints holds locked.</summary>
    private const string Sign = "in-use";

    private readonly string program;

    private Browser(string program) => this.program = program;

    /// <summary>The first one on the search path; null when there is none.</summary>
    /// <param name="searchPath">Folders, as the environment variable PATH has them.</param>
    public static Browser? Find(string? searchPath)
    {
        var folders = (searchPath ?? string.Empty).Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries);
        var ending = OperatingSystem.IsWindows() ? ".exe" : string.Empty;
        var found = Names.SelectMany(n => folders.Select(f => Path.Combine(f, n + ending))).FirstOrDefault(File.Exists);
        return found is null ? null : new Browser(found);
    }

    /// <summary>A page as PDF; the same page and browser give the same bytes.</summary>
    /// <exception cref="PrintException">The browser did not print it.</exception>
    public byte[] Print(string html, CancellationToken stop = default) => PdfDates.Fixed(Made(html, "pack.pdf", f => ["--no-pdf-header-footer", "--print-to-pdf=" + f], stop));

    /// <summary>A page as a picture in PNG, two dots a unit.</summary>
    /// <param name="html">The page.</param>
    /// <param name="width">Units.</param>
    /// <param name="height">Units.</param>
    /// <param name="stop">Stops the browser.</param>
    /// <exception cref="PrintException">The browser did not draw it.</exception>
    public byte[] Picture(string html, int width, int height, CancellationToken stop = default) => Made(
        html, "picture.png", f => ["--hide-scrollbars", "--force-device-scale-factor=2", string.Create(CultureInfo.InvariantCulture, $"--window-size={width},{height}"), "--screenshot=" + f], stop);

    private byte[] Made(string html, string name, Func<string, string[]> arguments, CancellationToken stop)
    {
        ClearLeft();
        var folder = Directory.CreateTempSubdirectory(Prefix).FullName;
        using var sign = new FileStream(Path.Combine(folder, Sign), FileMode.CreateNew, FileAccess.Write, FileShare.None);
        try
        {
            var (page, file) = (Path.Combine(folder, "page.html"), Path.Combine(folder, name));
            File.WriteAllText(page, html);
            Run([.. Arguments(folder), .. arguments(file), new Uri(page).AbsoluteUri], stop);
            return File.Exists(file) ? File.ReadAllBytes(file) : throw new PrintException($"{Path.GetFileName(program)} ended without a file");
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException or System.ComponentModel.Win32Exception)
        {
            throw new PrintException(error.Message, error);
        }
        finally
        {
            Remove(folder);
        }
    }

    /// <summary>Removes the folders of programs that were killed while they printed; one in use is locked.</summary>
    public static void ClearLeft()
    {
        foreach (var left in Directory.EnumerateDirectories(Path.GetTempPath(), Prefix + "*").Where(f => File.Exists(Path.Combine(f, Sign))).ToList())
        {
            try
            {
                using var free = new FileStream(Path.Combine(left, Sign), FileMode.Open, FileAccess.Write, FileShare.None);
                Remove(left);
            }
            catch (Exception error) when (error is IOException or UnauthorizedAccessException)
            {
                continue;
            }
        }
    }

    private void Run(IEnumerable<string> arguments, CancellationToken stop)
    {
        var start = new ProcessStartInfo(program) { RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
        foreach (var argument in arguments)
        {
            start.ArgumentList.Add(argument);
        }

        using var process = Process.Start(start) ?? throw new PrintException($"{Path.GetFileName(program)} does not start");
        process.OutputDataReceived += (_, _) => { };
        process.ErrorDataReceived += (_, _) => { };
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
        using var limit = CancellationTokenSource.CreateLinkedTokenSource(stop);
        limit.CancelAfter(Longest);
        try
        {
            process.WaitForExitAsync(limit.Token).GetAwaiter().GetResult();
        }
        catch (OperationCanceledException error)
        {
            process.Kill(entireProcessTree: true);
            process.WaitForExit();
            throw new PrintException(stop.IsCancellationRequested ? "printing was stopped" : $"{Path.GetFileName(program)} takes too long", error);
        }
    }

    private static IEnumerable<string> Arguments(string folder)
    {
        string[] always =
        [
            "--headless", "--disable-gpu", "--disable-dev-shm-usage", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync", "--disable-extensions",
            "--user-data-dir=" + Path.Combine(folder, "profile"),
        ];
        foreach (var argument in always)
        {
            yield return argument;
        }

        // The browser's sandbox does not start for the superuser, as in a container.
        if (!OperatingSystem.IsWindows() && string.Equals(Environment.UserName, "root", StringComparison.Ordinal))
        {
            yield return "--no-sandbox";
        }
    }

    /// <summary>A process of the browser may hold a file for a moment longer; what cannot go stays in the folder for temporary files.</summary>
    private static void Remove(string folder)
    {
        for (var attempt = 0; attempt < 5 && Directory.Exists(folder); attempt++)
        {
            try
            {
                Directory.Delete(folder, recursive: true);
            }
            catch (Exception error) when (error is IOException or UnauthorizedAccessException)
            {
                Thread.Sleep(100);
            }
        }
    }
}

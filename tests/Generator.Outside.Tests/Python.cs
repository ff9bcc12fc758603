using System.Diagnostics;
using Generator.Testing;

namespace Generator.Outside.Tests;

/// <summary>Runs Python, whose packages had no part in writing our files.</summary>
internal static class Python
{
    /// <summary>The system's own first: it has the packages of the distribution.</summary>
    private static readonly string[] Pythons = ["/usr/bin/python3", "python3", "python"];

    /// <summary>Why a test that needs a package is left out; null when the package is there, or when nothing may be left out.</summary>
    public static string? Lacking(string package) =>
        LeftOut.For(() => Array.Exists(Pythons, p => Run(p, "import " + package, string.Empty).Fault.Length == 0)
            ? null
            : $"It reads a file with Python's {package}, and that is not there. Maybe install it: apt-get install python3-{package}");

    /// <summary>What a script prints that is given a file as its only argument.</summary>
    /// <param name="package">What the script needs.</param>
    /// <param name="script">The script.</param>
    /// <param name="content">Of the file.</param>
    public static string Reads(string package, string script, byte[] content)
    {
        var file = Path.GetTempFileName();
        try
        {
            File.WriteAllBytes(file, content);
            var faults = new List<string>();
            foreach (var python in Pythons)
            {
                var (text, fault) = Run(python, script, file);
                if (fault.Length == 0)
                {
                    return text;
                }

                faults.Add($"{python}: {fault}");
            }

            throw new InvalidOperationException($"This test reads a file with Python's {package}, and that is not there: {string.Join("; ", faults)}\n  Maybe install it: apt-get install python3-{package}");
        }
        finally
        {
            File.Delete(file);
        }
    }

    private static (string Text, string Fault) Run(string python, string script, string file)
    {
        try
        {
            var start = new ProcessStartInfo(python) { RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
            foreach (var argument in new[] { "-c", script, file })
            {
                start.ArgumentList.Add(argument);
            }

            start.Environment["PYTHONIOENCODING"] = "utf-8";
            using var process = Process.Start(start)!;
            var errors = process.StandardError.ReadToEndAsync();
            var text = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            return (text, process.ExitCode == 0 ? string.Empty : errors.Result.Split('\n', StringSplitOptions.RemoveEmptyEntries).LastOrDefault() ?? "it failed");
        }
        catch (System.ComponentModel.Win32Exception error)
        {
            return (string.Empty, error.Message);
        }
    }
}

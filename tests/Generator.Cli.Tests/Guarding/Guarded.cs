using System.Diagnostics;
using System.Globalization;
using System.Runtime.InteropServices;

namespace Generator.Cli.Tests.Guarding;

/// <summary>The built program as a process of its own with its worker, on Linux, where /proc shows who is whose child.</summary>
internal sealed class Guarded : IDisposable
{
    /// <summary>Four who are in from the start and may neither wait nor linger: somebody always has to wait, so that the search goes on.</summary>
    public const string NeverDone = """
        { "title": "All at once", "length": { "counts": 48 }, "pace": { "patienceCounts": 0, "lingerCounts": 0 },
          "attackers": [
            { "name": "Bruno", "bearing": "12", "distance": 2, "entrance": 1 }, { "name": "Wanda", "bearing": "3", "distance": 2, "entrance": 1 },
            { "name": "Piet", "bearing": "6", "distance": 2, "entrance": 1 }, { "name": "Lotte", "bearing": "9", "distance": 2, "entrance": 1 } ] }
        """;

    private readonly Process guard;
    private readonly Task<string> output;

    private Guarded(Process guard)
    {
        this.guard = guard;
        output = guard.StandardOutput.ReadToEndAsync();
    }

    /// <summary>Starts the program.</summary>
    /// <param name="environment">Variables such as "GENERATOR_GRACE=1".</param>
    /// <param name="args">The command line.</param>
    public static Guarded Start(string[] environment, params string[] args)
    {
        // A busy machine may take long to end what is over; who tests just that says otherwise.
        string[] line = ["--default-signal=INT,HUP,QUIT,TERM", "GENERATOR_GRACE=900", .. environment, "dotnet", Path.Combine(AppContext.BaseDirectory, "generator.dll"), .. args];
        return new Guarded(Process.Start(new ProcessStartInfo("env", line)
        {
            UseShellExecute = false,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!);
    }

    /// <summary>The process that does the work. Waits until there is one.</summary>
    public async Task<int> Worker()
    {
        while (!guard.HasExited)
        {
            if (Children().FirstOrDefault() is { } child)
            {
                return int.Parse(child, CultureInfo.InvariantCulture);
            }

            await System.Threading.Tasks.Task.Delay(20);
        }

        throw new InvalidOperationException("The program ended without a worker.");
    }

    /// <summary>The next line on standard error, which says this.</summary>
    public async Task<string> Told(string words)
    {
        var line = await guard.StandardError.ReadLineAsync();
        Assert.Contains(words, line, StringComparison.Ordinal);
        return line!;
    }

    /// <summary>Whether the next line on standard error says this.</summary>
    public async Task<bool> Says(string words) => await guard.StandardError.ReadLineAsync() is { } line && line.Contains(words, StringComparison.Ordinal);

    /// <summary>Waits until a routine is found and kept; a better one may take its place.</summary>
    public async Task Kept(string folder)
    {
        await Told("points, no fewer than");
        while (!guard.HasExited)
        {
            if (Directory.EnumerateFiles(folder, "*.rescued-*.routine.json").Any())
            {
                return;
            }

            await System.Threading.Tasks.Task.Delay(20);
        }

        throw new InvalidOperationException("The program ended before a routine was kept.");
    }

    /// <summary>Sends a signal to a process that may have just ended.</summary>
    public static void Send(string signal, int process)
    {
        using var kill = Process.Start("kill", ["-" + signal, process.ToString(CultureInfo.InvariantCulture)]);
        kill.WaitForExit();
    }

    /// <summary>Sends a signal until the process is gone: the runtime answers the first one itself and expects the second where it comes from a real fault.</summary>
    public static async Task Kill(string signal, int process)
    {
        while (IsAlive(process))
        {
            Send(signal, process);
            await System.Threading.Tasks.Task.Delay(100);
        }
    }

    /// <summary>Sends the guard a signal as soon as there is a worker, without any rest in between; returns the worker.</summary>
    public int SendAtBirth(string signal)
    {
        var number = Enum.Parse<SignalNumber>(signal, ignoreCase: true);
        while (!guard.HasExited)
        {
            if (Children().FirstOrDefault() is { } child)
            {
                Assert.Equal(0, Kill(guard.Id, (int)number));
                return int.Parse(child, CultureInfo.InvariantCulture);
            }
        }

        throw new InvalidOperationException("The program ended without a worker.");
    }

    /// <summary>Sends a signal to the program as it was started, which is the guard.</summary>
    public void Send(string signal) => Send(signal, guard.Id);

    /// <summary>Waits for the end. Standard error is what had not been read yet.</summary>
    public async Task<Answer> End()
    {
        var errors = await guard.StandardError.ReadToEndAsync();
        var printed = await output;
        await guard.WaitForExitAsync();
        return new Answer(guard.ExitCode, printed, errors);
    }

    public static bool IsAlive(int process) => File.Exists($"/proc/{process.ToString(CultureInfo.InvariantCulture)}/stat")
        && File.ReadAllText($"/proc/{process.ToString(CultureInfo.InvariantCulture)}/stat").Split(") ")[^1][0] != 'Z';

    public void Dispose()
    {
        if (!guard.HasExited)
        {
            guard.Kill(entireProcessTree: true);
        }

        guard.Dispose();
    }

    private IEnumerable<string> Children() => Directory.EnumerateDirectories(Task(guard.Id)).SelectMany(ChildrenOf);

    /// <summary>None when the thread has just ended.</summary>
    private static string[] ChildrenOf(string thread)
    {
        try
        {
            return File.ReadAllText(Path.Combine(thread, "children")).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        }
        catch (IOException)
        {
            return [];
        }
    }

    [DllImport("libc", EntryPoint = "kill")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Kill(int process, int signal);

    private enum SignalNumber
    {
        None = 0,
        Int = 2,
        Term = 15,
    }

    private static string Task(int process) => $"/proc/{process.ToString(CultureInfo.InvariantCulture)}/task";
}

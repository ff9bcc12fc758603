using System.ComponentModel;
using System.Diagnostics;
using System.IO.Pipes;
using System.Reflection;

namespace Generator.Cli.Guarding;

/// <summary>
/// Runs the long commands in a process of their own and watches it: when the solver aborts, memory runs out, or a search does not end, that
/// process is lost, but the user gets an error that says what happened and where the best routine so far is. Input, output and terminal are
/// the worker's own. The guard itself loads neither library nor solver.
/// </summary>
internal static class Guard
{
    /// <summary>How a worker finds its pipes and its rescue file.</summary>
    public const string LifelineVariable = "GENERATOR_LIFELINE";

    /// <summary>Set to anything, all work is done in one process, for debuggers and profilers.</summary>
    public const string AloneVariable = "GENERATOR_ALONE";

    private static readonly string[] Commands = ["draft", "complete", "alternatives", "repair", "revise", "explain", "paperwork"];

    /// <summary>The command line is one for a guard.</summary>
    public static bool IsFor(string[] args) => args is [var command, ..]
        && Array.IndexOf(Commands, command) >= 0
        && Array.IndexOf(args, "--help") < 0
        && Array.IndexOf(args, "-h") < 0
        && Environment.GetEnvironmentVariable(LifelineVariable) is null
        && Environment.GetEnvironmentVariable(AloneVariable) is null;

    /// <summary>Runs a command line in a worker.</summary>
    /// <returns>Its exit code, or one of our own when it broke down; null when no worker can be started.</returns>
    public static int? Run(string[] args)
    {
        using var orders = new AnonymousPipeServerStream(PipeDirection.Out, HandleInheritability.Inheritable);
        using var news = new AnonymousPipeServerStream(PipeDirection.In, HandleInheritability.Inheritable);
        var rescue = RescuePath.For(args);
        var start = WorkerOf(args, orders, news, rescue);
        start.RedirectStandardInput = StandardStreams.IsInputClosed;
        using var asking = new Asking(orders);
        try
        {
            using var worker = Process.Start(start);
            if (worker is null)
            {
                return null;
            }

            if (start.RedirectStandardInput)
            {
                worker.StandardInput.Close();
            }

            orders.DisposeLocalCopyOfClientHandle();
            news.DisposeLocalCopyOfClientHandle();
            return new Watch(worker, asking, news, rescue, () => LeftBehind.Clear(RescuePath.OutOf(args), rescue)).Code();
        }
        catch (Exception error) when (error is Win32Exception or FileNotFoundException)
        {
            return null;
        }
    }

    /// <summary>How this program is started once more as a worker.</summary>
    /// <param name="args">Its command line.</param>
    /// <param name="orders">The pipe to it.</param>
    /// <param name="news">The pipe from it.</param>
    /// <param name="rescue">Where it keeps the best routine so far.</param>
    public static ProcessStartInfo WorkerOf(IEnumerable<string> args, AnonymousPipeServerStream orders, AnonymousPipeServerStream news, string rescue)
    {
        var start = new ProcessStartInfo(Environment.ProcessPath ?? string.Empty) { UseShellExecute = false };
        if (IsRuntime(start.FileName))
        {
            start.ArgumentList.Add(Path.ChangeExtension(Path.Combine(AppContext.BaseDirectory, Assembly.GetExecutingAssembly().GetName().Name!), ".dll"));
        }

        foreach (var word in args)
        {
            start.ArgumentList.Add(word);
        }

        start.Environment[LifelineVariable] = $"{orders.GetClientHandleAsString()} {news.GetClientHandleAsString()} {rescue}";
        return start;
    }

    /// <summary>The program was started as <c>dotnet generator.dll</c>, and not by its own name.</summary>
    private static bool IsRuntime(string program) =>
        string.Equals(Path.GetFileNameWithoutExtension(program), "dotnet", StringComparison.OrdinalIgnoreCase);
}

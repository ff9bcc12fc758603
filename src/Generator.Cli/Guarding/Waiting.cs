using System.Diagnostics;
using System.IO.Pipes;
using System.Text;
using Generator.Cli.Work;
using Generator.Rehearsal.Offers;
using Newtonsoft.Json;

namespace Generator.Cli.Guarding;

/// <summary>
/// A worker that is started before anybody knows for what, so that nobody waits for its start: it reads the library, what it is to exercise meanwhile as the first line of standard input, and then
/// its command line as the second. This process is its guard and holds its lifeline, so that it ends when this one does, however that ends.
/// </summary>
internal sealed class Waiting : IDisposable
{
    /// <summary>In place of a command.</summary>
    public const string Word = "waiting";

    private static readonly TimeSpan Beat = TimeSpan.FromMilliseconds(100);

    private static readonly WatchLimits Limits = WatchLimits.Find();

    private readonly AnonymousPipeServerStream orders = new(PipeDirection.Out, HandleInheritability.Inheritable);
    private readonly AnonymousPipeServerStream news = new(PipeDirection.In, HandleInheritability.Inheritable);
    private readonly string rescue = RescuePath.For([]);
    private readonly Process worker;
    private readonly News said = new();
    private readonly Task told, practice;

    /// <param name="exercise">What is likely to be asked of it.</param>
    public Waiting(Exercise exercise)
    {
        var start = Guard.WorkerOf([Word], orders, news, rescue);
        start.RedirectStandardInput = start.RedirectStandardOutput = start.RedirectStandardError = true;
        worker = Process.Start(start) ?? throw new InvalidOperationException("No worker can be started.");
        orders.DisposeLocalCopyOfClientHandle();
        news.DisposeLocalCopyOfClientHandle();
        told = Task.Run(() => said.ReadAll(new StreamReader(news)), CancellationToken.None);
        practice = Task.Run(() => worker.StandardInput.WriteLine(JsonConvert.SerializeObject(exercise, Formatting.None)), CancellationToken.None);
    }

    public bool IsThere => !worker.HasExited;

    /// <summary>The worker's side: reads the library, exercises, and waits for a command line. Null when there will be none.</summary>
    public static string[]? Line()
    {
        EarlyBook.Begin(["complete"]);
        EarlyBook.Bundled();
        var exercise = Console.In.ReadLine() is { } first ? JsonConvert.DeserializeObject<Exercise>(first) : null;
        var asked = new CancellationTokenSource();
        var line = Task.Factory.StartNew(Console.In.ReadLine, CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default);
        _ = line.ContinueWith(_ => asked.Cancel(), CancellationToken.None, TaskContinuationOptions.ExecuteSynchronously, TaskScheduler.Default);
        _ = exercise?.Do(asked.Token);
        return line.GetAwaiter().GetResult() is { } text ? JsonConvert.DeserializeObject<string[]>(text) : null;
    }

    /// <summary>Has it do something, once.</summary>
    /// <param name="words">The command line.</param>
    /// <param name="input">What follows on standard input.</param>
    /// <param name="patience">For how long it is waited for, whatever its command line says, and for how long once it was asked to stop.</param>
    /// <param name="line">Told of every line that it writes, at once.</param>
    /// <param name="stop">Asks it to answer with the best so far.</param>
    public async Task<Answer> Do(string[] words, string input, (TimeSpan Work, TimeSpan End) patience, Action<string> line, CancellationToken stop)
    {
        using var asked = stop.Register(Order);
        using var late = new CancellationTokenSource(patience.Work + patience.End);
        using var slow = stop.Register(() => late.CancelAfter(patience.End));
        var (output, errors) = (Read(worker.StandardOutput, line, late.Token), worker.StandardError.ReadToEndAsync(late.Token));
        await practice.ConfigureAwait(false);
        await worker.StandardInput.WriteLineAsync(JsonConvert.SerializeObject(words, Formatting.None).AsMemory(), late.Token).ConfigureAwait(false);
        await worker.StandardInput.WriteAsync(input.AsMemory(), late.Token).ConfigureAwait(false);
        worker.StandardInput.Close();
        if (!await Ends(late.Token).ConfigureAwait(false))
        {
            return new Answer(string.Empty, new Breakdown(BreakdownKind.Memory, 0, Limits).Text(null, hadTerminal: false).Trim());
        }

        await told.ConfigureAwait(false);
        if (said.EndCode is null)
        {
            return new Answer(string.Empty, new Breakdown(BreakdownKind.Died, worker.ExitCode, Limits).Text(null, hadTerminal: false).Trim());
        }

        var json = await output.ConfigureAwait(false);
        var isGood = worker.ExitCode is ExitCode.Good or ExitCode.Forbidden || (worker.ExitCode == ExitCode.OutOfTime && json.Length > 0);
        return isGood ? new Answer(json, string.Empty) : new Answer(string.Empty, (await errors.ConfigureAwait(false)).Trim() is { Length: > 0 } text ? text : "Nothing was found.");
    }

    public void Dispose()
    {
        if (!worker.HasExited)
        {
            worker.Kill(entireProcessTree: true);
        }

        worker.Dispose();
        orders.Dispose();
        news.Dispose();
        LeftBehind.Clear(null, rescue);
    }

    private static async Task<string> Read(StreamReader from, Action<string> told, CancellationToken late)
    {
        var all = new StringBuilder();
        while (await from.ReadLineAsync(late).ConfigureAwait(false) is { } line)
        {
            told(line);
            all.Append(line).Append('\n');
        }

        return all.ToString();
    }

    /// <summary>False once it has taken more memory than it may; whoever disposes of this ends it.</summary>
    private async Task<bool> Ends(CancellationToken late)
    {
        using var memory = new WorkerMemory(worker);
        var end = worker.WaitForExitAsync(late);
        while (await Task.WhenAny(end, Task.Delay(Beat, CancellationToken.None)).ConfigureAwait(false) != end)
        {
            if (memory.Bytes() > Limits.Memory)
            {
                return false;
            }
        }

        await end.ConfigureAwait(false);
        return true;
    }

    private void Order()
    {
        try
        {
            orders.WriteByte(1);
            orders.Flush();
        }
        catch (Exception error) when (error is IOException or ObjectDisposedException)
        {
            // The worker has just ended.
            return;
        }
    }
}

using System.Diagnostics;

namespace Generator.Cli.Guarding;

/// <summary>Watches one worker until it ends or has to be ended.</summary>
internal sealed class Watch
{
    private static readonly TimeSpan Beat = TimeSpan.FromMilliseconds(100);

    /// <summary>A beat that took longer was slept through, by the machine or by us, and counts as no more.</summary>
    private static readonly TimeSpan LongestBeat = TimeSpan.FromSeconds(1);

    private readonly Process worker;
    private readonly Asking asking;
    private readonly string rescue;
    private readonly Action clear;
    private readonly News news = new();
    private readonly Thread reader;
    private readonly WatchLimits limits = WatchLimits.Find();
    private BreakdownKind? cause;

    /// <param name="worker">Whom it watches.</param>
    /// <param name="asking">What the user asks.</param>
    /// <param name="news">What the worker tells.</param>
    /// <param name="rescue">Where the best routine is kept.</param>
    /// <param name="clear">Clears up after a worker that did not live to its end.</param>
    public Watch(Process worker, Asking asking, Stream news, string rescue, Action clear)
    {
        (this.worker, this.asking, this.rescue, this.clear) = (worker, asking, rescue, clear);
        reader = new Thread(() => this.news.ReadAll(new StreamReader(news))) { IsBackground = true, Name = "worker's news" };
        reader.Start();
    }

    /// <summary>The exit code for the user, after the worker is gone. What went wrong is told on standard error.</summary>
    public int Code()
    {
        Wait();
        reader.Join(LongestBeat);
        if (news.EndCode is { } code and < ExitCode.Fault)
        {
            return code;
        }

        if (news.EndCode is null)
        {
            clear();
        }

        var breakdown = new Breakdown(cause ?? Died(), worker.ExitCode, limits);
        Console.Error.Write(breakdown.Text(Kept.Find(rescue), hadTerminal: !Console.IsErrorRedirected));
        return news.EndCode ?? breakdown.Code;
    }

    /// <summary>A terminal sends Ctrl-C to the worker as well; one that has only just begun cannot answer it and ends.</summary>
    private BreakdownKind Died() => news.EndCode is not null ? BreakdownKind.Told
        : asking.WantsStop && worker.ExitCode == Breakdown.ByInterrupt ? BreakdownKind.Ended
        : BreakdownKind.Died;

    private void Wait()
    {
        var (awake, last) = (TimeSpan.Zero, Stopwatch.GetTimestamp());
        TimeSpan? latest = null;
        using var memory = new WorkerMemory(worker);
        while (!worker.WaitForExit(Beat))
        {
            var now = Stopwatch.GetTimestamp();
            var beat = Stopwatch.GetElapsedTime(last, now);
            awake += beat < LongestBeat ? beat : LongestBeat;
            last = now;
            if (news.TakeLimit() is { } limit)
            {
                latest = awake + limit + limits.Grace;
            }

            if (asking.WantsStop && (latest is null || latest > awake + limits.Grace))
            {
                latest = awake + limits.Grace;
            }

            if (CauseNow(awake, latest, memory) is { } found)
            {
                End(found);
                return;
            }
        }
    }

    private BreakdownKind? CauseNow(TimeSpan awake, TimeSpan? latest, WorkerMemory memory) =>
        asking.WantsEnd ? BreakdownKind.Ended
        : awake > latest ? BreakdownKind.Hung
        : memory.Bytes() > limits.Memory ? BreakdownKind.Memory
        : null;

    private void End(BreakdownKind found)
    {
        cause = found;
        worker.Kill(entireProcessTree: true);
        worker.WaitForExit();
    }
}

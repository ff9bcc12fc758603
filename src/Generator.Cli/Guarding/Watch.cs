using System.Diagnostics;
using System.Runtime.InteropServices;

namespace Generator.Cli.Guarding;

/// <summary>Watches one worker until it ends or has to be ended.</summary>
internal sealed class Watch
{
    private static readonly TimeSpan Beat = TimeSpan.FromMilliseconds(100);

    /// <summary>A beat that took longer was slept through, by the machine or by us, and counts as no more.</summary>
    private static readonly TimeSpan LongestBeat = TimeSpan.FromSeconds(1);

    private readonly Process worker;
    private readonly Stream orders;
    private readonly string rescue;
    private readonly News news = new();
    private readonly Thread reader;
    private readonly WatchLimits limits = WatchLimits.Find();
    private volatile int asked;
    private volatile bool ended;
    private BreakdownKind? cause;

    public Watch(Process worker, Stream orders, Stream news, string rescue)
    {
        (this.worker, this.orders, this.rescue) = (worker, orders, rescue);
        reader = new Thread(() => this.news.ReadAll(new StreamReader(news))) { IsBackground = true, Name = "worker's news" };
        reader.Start();
    }

    /// <summary>The exit code for the user, after the worker is gone. What went wrong is told on standard error.</summary>
    public int Code()
    {
        using var interrupt = PosixSignalRegistration.Create(PosixSignal.SIGINT, Asked);
        using var terminate = PosixSignalRegistration.Create(PosixSignal.SIGTERM, Ended);
        Wait();
        reader.Join(LongestBeat);
        if (news.EndCode is { } code and < ExitCode.Fault)
        {
            return code;
        }

        var kept = news.KeptPoints is { } points && File.Exists(rescue) ? new Kept(rescue, points) : null;
        var breakdown = new Breakdown(cause ?? (news.EndCode is null ? BreakdownKind.Died : BreakdownKind.Told), worker.ExitCode, limits);
        Console.Error.Write(breakdown.Text(kept, hadTerminal: !Console.IsErrorRedirected));
        return news.EndCode ?? breakdown.Code;
    }

    private void Wait()
    {
        var (awake, last) = (TimeSpan.Zero, Stopwatch.GetTimestamp());
        TimeSpan? latest = null;
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

            if (asked == 1 && (latest is null || latest > awake + limits.Grace))
            {
                latest = awake + limits.Grace;
            }

            if (CauseNow(awake, latest) is { } found)
            {
                End(found);
                return;
            }
        }
    }

    private BreakdownKind? CauseNow(TimeSpan awake, TimeSpan? latest) =>
        ended || asked > 1 ? BreakdownKind.Ended
        : awake > latest ? BreakdownKind.Hung
        : Memory() > limits.Memory ? BreakdownKind.Memory
        : null;

    private long Memory()
    {
        try
        {
            worker.Refresh();
            return worker.WorkingSet64;
        }
        catch (InvalidOperationException)
        {
            // It has just ended.
            return 0;
        }
    }

    private void End(BreakdownKind found)
    {
        cause = found;
        worker.Kill(entireProcessTree: true);
        worker.WaitForExit();
    }

    /// <summary>The first Ctrl-C ends the search and keeps the best; the second ends the program.</summary>
    private void Asked(PosixSignalContext signal)
    {
        signal.Cancel = true;
        asked++;
        try
        {
            orders.WriteByte(1);
            orders.Flush();
        }
        catch (IOException)
        {
            // The worker has just ended.
            return;
        }
    }

    private void Ended(PosixSignalContext signal)
    {
        signal.Cancel = true;
        ended = true;
    }
}

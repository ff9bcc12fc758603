using System.Diagnostics;
using Generator.Solver;
using Generator.Solver.Questions;

namespace Generator.Benchmarks.Measuring;

/// <summary>Notes every better routine of a search with the time it took, by the clock and of the processor, and ends the search at the limit.</summary>
internal sealed class SearchWatch : IProgress<DraftProgress>, IDisposable
{
    private readonly long began = Stopwatch.GetTimestamp();
    private readonly TimeSpan usedBefore = Environment.CpuUsage.TotalTime;
    private readonly CancellationTokenSource ends = new();
    private readonly List<TracePoint> trace = [];
    private readonly Timer? timer;
    private readonly bool onlyFirst;

    /// <param name="limit">Of the search.</param>
    /// <param name="cores">Cores whose processor time is the limit, or 0 for the clock.</param>
    /// <param name="onlyFirst">Ends at the first routine.</param>
    public SearchWatch(TimeSpan limit, int cores, bool onlyFirst)
    {
        this.onlyFirst = onlyFirst;
        Clock = cores == 0 ? limit : limit * 20;
        if (cores > 0)
        {
            timer = new Timer(_ => EndWhenUsed(limit * cores), null, 10, 10);
        }
    }

    /// <summary>Limit by the clock: the limit itself, or far more when processor time is the limit.</summary>
    public TimeSpan Clock { get; }

    public CancellationToken Stop => ends.Token;

    public IReadOnlyList<TracePoint> Trace => trace;

    /// <summary>Milliseconds by the clock, once ended.</summary>
    public double Wall { get; private set; }

    /// <summary>Milliseconds of processor time, once ended.</summary>
    public double Processor { get; private set; }

    public void Report(DraftProgress value)
    {
        if (value.BestPoints is { } points)
        {
            trace.Add(new TracePoint(WallNow, ProcessorNow, points));
            if (onlyFirst)
            {
                ends.Cancel();
            }
        }
    }

    public void End() => (Wall, Processor) = (WallNow, ProcessorNow);

    public void Dispose()
    {
        timer?.Dispose();
        ends.Dispose();
    }

    private double WallNow => Stopwatch.GetElapsedTime(began).TotalMilliseconds;

    private double ProcessorNow => (Environment.CpuUsage.TotalTime - usedBefore).TotalMilliseconds;

    private void EndWhenUsed(TimeSpan limit)
    {
        if (Environment.CpuUsage.TotalTime - usedBefore >= limit)
        {
            ends.Cancel();
        }
    }
}

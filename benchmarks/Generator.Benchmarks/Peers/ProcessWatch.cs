using System.Diagnostics;

namespace Generator.Benchmarks.Peers;

/// <summary>Watches a process that this one started: processor time, greatest memory; ends it when it has used up its processor time.</summary>
internal sealed class ProcessWatch : IDisposable
{
    private readonly Process process;
    private readonly double limit;
    private readonly Timer timer;
    private readonly Lock door = new();

    /// <param name="process">Started by this process.</param>
    /// <param name="limit">Milliseconds of processor time; infinite for no limit.</param>
    public ProcessWatch(Process process, double limit)
    {
        (this.process, this.limit) = (process, limit);
        timer = new Timer(_ => Look(), null, 20, 20);
    }

    /// <summary>Milliseconds of processor time when last seen.</summary>
    public double Processor { get; private set; }

    /// <summary>Greatest resident set, in MiB.</summary>
    public double Peak { get; private set; }

    public void Look()
    {
        lock (door)
        {
            try
            {
                // A process that is just ending shows no memory any more, hence the greater one.
                process.Refresh();
                (Processor, Peak) = (Math.Max(Processor, process.TotalProcessorTime.TotalMilliseconds), Math.Max(Peak, process.PeakWorkingSet64 / 1048576.0));
                if (Processor >= limit)
                {
                    process.Kill();
                }
            }
            catch (Exception e) when (e is InvalidOperationException or System.ComponentModel.Win32Exception)
            {
                // It has just ended; what was seen last stands.
            }
        }
    }

    public void Dispose() => timer.Dispose();
}

using System.Diagnostics;
using System.Globalization;
using Generator.Domain;
using Generator.Solver;
using Spectre.Console;

namespace Generator.Cli.Work;

/// <summary>Shows how a search goes: one line that changes on a screen, else a line for every better routine.</summary>
/// <param name="lines">Where lines go when there is no screen.</param>
/// <param name="screen">The screen; null where lines are only ever added.</param>
/// <param name="keep">Told of every better routine that is not the last.</param>
internal sealed class ProgressBoard(TextWriter lines, IAnsiConsole? screen, Action<Routine, int>? keep = null) : IProgress<DraftProgress>
{
    private static readonly TimeSpan Beat = TimeSpan.FromMilliseconds(200);

    private readonly Lock gate = new();
    private DraftProgress? last;

    /// <summary>Runs a search and shows its progress meanwhile. What the search throws is thrown here.</summary>
    public DraftResult Run(Func<IProgress<DraftProgress>, DraftResult> search)
    {
        if (screen is null)
        {
            return search(this);
        }

        var watch = Stopwatch.StartNew();
        var work = Task.Run(() => search(this));
        screen.Live(Line(watch.Elapsed)).AutoClear(true).Start(live =>
        {
            while (!((IAsyncResult)work).AsyncWaitHandle.WaitOne(Beat))
            {
                live.UpdateTarget(Line(watch.Elapsed));
            }
        });
        return work.GetAwaiter().GetResult();
    }

    public void Report(DraftProgress value)
    {
        lock (gate)
        {
            var better = value.BestPoints is { } points && (last?.BestPoints is not { } before || points < before);
            last = value;
            if (better && value.Best is { } routine && value.BestPoints > value.Bound)
            {
                keep?.Invoke(routine, value.BestPoints.Value);
            }

            if (better && screen is null)
            {
                lines.WriteLine(Words(value, value.Elapsed));
            }
        }
    }

    /// <summary>"3 points, no fewer than 0, after 2.4 s".</summary>
    public static string Words(DraftProgress? progress, TimeSpan elapsed)
    {
        var best = progress?.BestPoints is { } points ? $"{Points(points)}, no fewer than {progress.Bound}" : "no routine yet";
        return string.Create(CultureInfo.InvariantCulture, $"{best}, after {elapsed.TotalSeconds:0.0} s");
    }

    private static string Points(int points) => points == 1 ? "1 point" : string.Create(CultureInfo.InvariantCulture, $"{points} points");

    private Text Line(TimeSpan elapsed)
    {
        lock (gate)
        {
            return new Text($"Drafting: {Words(last, elapsed)}. Ctrl-C keeps the best so far.");
        }
    }
}

using System.Diagnostics;
using System.Globalization;
using Generator.Solver;
using Spectre.Console;

namespace Generator.Cli.Work;

/// <summary>Shows how a search goes: one line that changes on a screen, else a line for every better routine.</summary>
internal sealed class ProgressBoard(TextWriter lines, IAnsiConsole? screen) : IProgress<DraftProgress>
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

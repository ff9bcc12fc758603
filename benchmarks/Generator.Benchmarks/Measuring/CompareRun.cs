using System.Globalization;
using System.Text;
using Generator.Benchmarks.Stored;

namespace Generator.Benchmarks.Measuring;

/// <summary>
/// Points of two runs at equal times, brief by brief: quality must not pay for speed. Times are seconds of all cores by processor time, so that runs
/// on a machine on which others work can be compared as well.
/// </summary>
internal static class CompareRun
{
    private static readonly double[] Moments = [1, 3, 10];

    public static int All(string[] args)
    {
        if (args is not [var before, var after])
        {
            Console.Error.WriteLine("compare BEFORE.json AFTER.json takes two files of measure --out.\nMaybe one is missing.");
            return 2;
        }

        var (old, now) = (Results.Load(before), Results.Load(after));
        Console.WriteLine(Of(old, now));
        return Worse(old, now).Any() ? 1 : 0;
    }

    public static string Of(Results before, Results after)
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"{Named(before)} against {Named(after)}, at equal processor time (a second is one of {after.Machine.Cores} busy cores). A brief without a routine by then counts as worse than any points.\n\n");
        var table = new MarkdownTable(["family", "briefs", "first, ms of processor time, median before → after", .. Moments.SelectMany(s => new[] { Text($"{s} s: points before → after, sums"), "better", "equal", "worse" })]);
        foreach (var family in Family.All)
        {
            var pairs = Pairs(before, after).Where(p => p.Before.Brief.StartsWith(family.Name + "-", StringComparison.Ordinal)).ToList();
            if (pairs.Count > 0)
            {
                table.Row([family.Name, Text($"{pairs.Count}"), Text($"{First(pairs.Select(p => p.Before))} → {First(pairs.Select(p => p.After))}"), .. Moments.SelectMany(s => Cells(before, after, pairs, s))]);
            }
        }

        text.Append(table);
        var worse = Worse(before, after).ToList();
        text.Append(CultureInfo.InvariantCulture, $"\nWorse than before at some of these times: {worse.Count} of {Pairs(before, after).Count()} briefs.\n");
        if (worse.Count > 0)
        {
            var list = new MarkdownTable(["brief", .. Moments.Select(s => Text($"{s} s"))]);
            foreach (var (old, now) in worse)
            {
                list.Row([old.Brief, .. Moments.Select(s => $"{Points(before, old, s)} → {Points(after, now, s)}")]);
            }

            text.Append('\n').Append(list);
        }

        return text.ToString();
    }

    private static IEnumerable<string> Cells(Results before, Results after, List<(Measurement Before, Measurement After)> pairs, double seconds)
    {
        var both = pairs.Select(p => (Old: p.Before.PointsAt(seconds, before.Machine.Cores), Now: p.After.PointsAt(seconds, after.Machine.Cores))).ToList();
        var (old, now) = (both.Where(b => b.Old is not null && b.Now is not null).Sum(b => b.Old), both.Where(b => b.Old is not null && b.Now is not null).Sum(b => b.Now));
        yield return Text($"{old} → {now}");
        yield return Text($"{both.Count(b => (b.Now ?? int.MaxValue) < (b.Old ?? int.MaxValue))}");
        yield return Text($"{both.Count(b => b.Now == b.Old)}");
        yield return Text($"{both.Count(b => (b.Now ?? int.MaxValue) > (b.Old ?? int.MaxValue))}");
    }

    private static IEnumerable<(Measurement Before, Measurement After)> Worse(Results before, Results after) =>
        Pairs(before, after).Where(p => Moments.Any(s => (p.After.PointsAt(s, after.Machine.Cores) ?? int.MaxValue) > (p.Before.PointsAt(s, before.Machine.Cores) ?? int.MaxValue)));

    private static IEnumerable<(Measurement Before, Measurement After)> Pairs(Results before, Results after) =>
        before.Measurements.Where(m => m.IsFresh).Join(after.Measurements.Where(m => m.IsFresh), m => m.Brief, m => m.Brief, (b, a) => (b, a), StringComparer.Ordinal);

    private static string First(IEnumerable<Measurement> measurements) => Quartiles.Of(measurements.Select(m => m.Trace.Count > 0 ? (double?)m.Trace[0].Processor : null)) is { } q ? Text($"{q.Median:0}") : "–";

    private static string Points(Results results, Measurement measurement, double seconds) => measurement.PointsAt(seconds, results.Machine.Cores) is { } points ? Text($"{points}") : "none";

    private static string Named(Results results) =>
        Text($"{(results.Of.Length > 0 ? results.Of : "a run")} ({results.Machine.Date})");

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}

using System.Globalization;
using System.Text;
using Generator.Benchmarks.Stored;

namespace Generator.Benchmarks.Measuring;

/// <summary>The tables over a run's measurements.</summary>
internal static class MeasureTables
{
    private static readonly double[] Moments = [1, 3, 10];

    /// <summary>What is aimed at for the median time to the first valid routine, in milliseconds.</summary>
    private static readonly Dictionary<string, double> FirstTargets = new(StringComparer.Ordinal) { ["40x4"] = 500, ["60x5"] = 1000, ["120x8"] = 3000, ["240x8"] = 8000 };

    /// <summary>What is aimed at for the median time to zero points or a proof, in milliseconds.</summary>
    private static readonly Dictionary<string, double> ProvenTargets = new(StringComparer.Ordinal) { ["24x3"] = 5000, ["40x4"] = 15000 };

    private const double MemoryTarget = 500;

    public static string Of(Results results, BestKnown known)
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"### First valid routine, ms\n\n{First(results)}\n");
        text.Append(CultureInfo.InvariantCulture, $"### Points over time, and time to zero points or a proof\n\n{Points(results, known)}\n");
        text.Append(CultureInfo.InvariantCulture, $"### Peak memory\n\n{Memory(results)}\n");
        if (results.Measurements.Any(m => m.Alone))
        {
            text.Append(CultureInfo.InvariantCulture, $"### Our own CP-SAT alone, without the constructive pass\n\n{Alone(results)}\n");
        }

        text.Append(CultureInfo.InvariantCulture, $"### More than a tenth above the best known, after 10 s\n\n{Above(results, known)}\n");
        return text.ToString();
    }

    private static string First(Results results)
    {
        var table = new MarkdownTable("family", "found", "fresh process, from its start", "of that start-up, library and brief", "fresh, brief in hand", "its processor time", "warm, brief in hand", "its processor time", "aim");
        foreach (var (family, all) in Families(results))
        {
            var (fresh, warm) = (all.Where(m => m.IsFresh).ToList(), all.Where(m => m.Warm).ToList());
            var median = Quartiles.Of(fresh.Select(m => m.First));
            table.Row(
                family.Name,
                string.Create(CultureInfo.InvariantCulture, $"{fresh.Count(m => m.First is not null)} of {fresh.Count}"),
                Text(fresh.Select(m => m.FirstFromStart)),
                Text(fresh.Select(m => (double?)(m.Start + m.Library + m.Reading))),
                median?.ToText("0") ?? "–",
                Text(fresh.Select(FirstProcessor)),
                Text(warm.Select(m => m.First)),
                Text(warm.Select(FirstProcessor)),
                Aims(family.Size, Judged(results, fresh), Judged(results, warm)));
        }

        return table.ToString();
    }

    private static string Points(Results results, BestKnown known)
    {
        var table = new MarkdownTable("family", "first", "1 s", "3 s", "10 s", "end", "best known", "zero or proven", "ms to it", "aim");
        foreach (var (family, all) in Families(results))
        {
            var fresh = all.Where(m => m.IsFresh && m.First is not null).ToList();
            var proven = fresh.Where(m => m.Proven is not null).ToList();
            var times = Quartiles.Of(fresh.Select(m => m.Proven is { } p ? Time(results, p) : (double?)null));

            // The median over all briefs: those that were never proven count as longer than any.
            var median = Quartiles.Of(fresh.Select(m => m.Proven is { } p ? (double?)Time(results, p) : double.PositiveInfinity))?.Median;
            table.Row(
            [
                family.Name,
                Text(fresh.Select(m => (double?)m.Trace[0].Points), "0.#"),
                .. Moments.Select(s => Found(fresh.Select(m => m.PointsAt(s, results.ByProcessor)).ToList())),
                Text(fresh.Select(m => (double?)m.Trace[^1].Points), "0.#"),
                Text(fresh.Select(m => (double?)known.Of(m.Brief)), "0.#"),
                string.Create(CultureInfo.InvariantCulture, $"{proven.Count} of {fresh.Count}"),
                times?.ToText("0") ?? "–",
                !ProvenTargets.TryGetValue(family.Size, out var aim) ? string.Empty : string.Create(CultureInfo.InvariantCulture, $"≤ {aim}: {Met(median <= aim)}"),
            ]);
        }

        return table.ToString();
    }

    private static string Memory(Results results)
    {
        var table = new MarkdownTable("family", "MiB", "aim");
        foreach (var (family, all) in Families(results))
        {
            var peak = Quartiles.Of(all.Where(m => m.IsFresh && m.Peak > 0).Select(m => (double?)m.Peak));
            var aim = string.Equals(family.Size, "120x8", StringComparison.Ordinal) && peak is not null ? string.Create(CultureInfo.InvariantCulture, $"≤ {MemoryTarget}: {Met(peak.Greatest <= MemoryTarget)}") : string.Empty;
            table.Row(family.Name, peak?.ToText("0") ?? "–", aim);
        }

        return table.ToString();
    }

    private static string Alone(Results results)
    {
        var table = new MarkdownTable("family", "found", "first, ms", "× the whole search", "points at the end", "whole", "memory, × the whole search");
        foreach (var (family, all) in Families(results).Where(f => f.Measurements.Exists(m => m.Alone)))
        {
            var pairs = all.Where(m => m.Alone).Join(all.Where(m => m.IsFresh && m.First > 0), a => a.Brief, w => w.Brief, (a, w) => (Alone: a, Whole: w), StringComparer.Ordinal).ToList();
            var capped = pairs.Exists(p => p.Alone.First is null) ? "≥ " : string.Empty;
            table.Row(
                family.Name,
                string.Create(CultureInfo.InvariantCulture, $"{pairs.Count(p => p.Alone.First is not null)} of {pairs.Count}"),
                Text(pairs.Select(p => p.Alone.First)),
                capped + Text(pairs.Select(p => (p.Alone.First ?? p.Alone.Elapsed) / p.Whole.First), "0.#"),
                Text(pairs.Select(p => p.Alone.Trace.Count > 0 ? (double?)p.Alone.Trace[^1].Points : null), "0.#"),
                Text(pairs.Select(p => (double?)p.Whole.Trace[^1].Points), "0.#"),
                Text(pairs.Select(p => (double?)(p.Alone.Peak / p.Whole.Peak)), "0.0"));
        }

        return table.ToString();
    }

    private static string Above(Results results, BestKnown known)
    {
        var fresh = results.Measurements.Where(m => m.IsFresh).ToList();
        var above = fresh.Where(m => known.Of(m.Brief) is { } best && (m.PointsAt(10, results.ByProcessor) is not { } points || points > best * 1.1)).ToList();
        var text = new StringBuilder(string.Create(CultureInfo.InvariantCulture, $"{above.Count} of {fresh.Count} briefs"));
        text.Append(above.Count == 0 ? ".\n" : ", each with its points after 10 s and the best known: ");
        text.AppendJoin(", ", above.Select(m => string.Create(CultureInfo.InvariantCulture, $"{m.Brief} {m.PointsAt(10, results.ByProcessor)?.ToString(CultureInfo.InvariantCulture) ?? "nothing"}/{known.Of(m.Brief)}")));
        return text.Append(above.Count == 0 ? string.Empty : ".\n").ToString();
    }

    private static IEnumerable<(Family Family, List<Measurement> Measurements)> Families(Results results) =>
        Family.All.Select(f => (f, results.Measurements.Where(m => Path.GetFileName(m.Brief).StartsWith(f.Name + "-", StringComparison.Ordinal)).ToList())).Where(p => p.Item2.Count > 0);

    private static double Time(Results results, TracePoint point) => results.ByProcessor == 0 ? point.Wall : point.Processor / results.ByProcessor;

    /// <summary>Points of those that have a routine by then, and how many have none.</summary>
    private static string Found(List<int?> points)
    {
        var none = points.Count(p => p is null);
        return Text(points.Select(p => (double?)p), "0.#") + (none == 0 ? string.Empty : string.Create(CultureInfo.InvariantCulture, $", {none} none yet"));
    }

    private static double? FirstProcessor(Measurement measurement) => measurement.Trace.Count > 0 ? measurement.Trace[0].Processor : null;

    /// <summary>The median that is set against the aim: by the clock, or, where processor time was the limit, all of it, as if nothing ran side by side.</summary>
    private static double? Judged(Results results, List<Measurement> measurements) =>
        Quartiles.Of(measurements.Select(m => results.ByProcessor > 0 ? FirstProcessor(m) : m.First))?.Median;

    private static string Aims(string size, double? fresh, double? warm) =>
        !FirstTargets.TryGetValue(size, out var aim) ? string.Empty : string.Create(CultureInfo.InvariantCulture, $"≤ {aim}: fresh {Met(fresh <= aim)}{(warm is null ? string.Empty : ", warm " + Met(warm <= aim))}");

    private static string Met(bool met) => met ? "met" : "MISSED";

    private static string Text(IEnumerable<double?> figures, string format = "0") => Quartiles.Of(figures)?.ToText(format) ?? "–";
}

using System.Diagnostics;
using System.Globalization;
using Generator.Benchmarks.Measuring;
using Generator.Domain;
using Generator.Library;
using Generator.Rules;
using Generator.Solver.Alternatives;
using Generator.Solver.Repairing;
using Generator.Solver.Reworking;
using Generator.Solver.Revising;

namespace Generator.Benchmarks.Rework;

/// <summary>
/// How long alternatives, repairs and revisions of forty moves against four take: seconds to the first answer and to the end, by the clock and
/// in processor time of all threads.
/// </summary>
internal static class ReworkRun
{
    private const int Kept = 20;

    public static int All(string[] args)
    {
        var book = LongRoutine.Book();
        if (args is ["--draw"])
        {
            StoredRoutines.Write(book);
            return 0;
        }

        var only = args is ["--only", var word] ? word : null;
        List<(string Kind, string Name, Timing Time)> rows = [];
        foreach (var (file, i) in StoredRoutines.Files().Select((f, i) => (f, i)))
        {
            var routine = StoredRoutines.Read(file, book);
            var name = Path.GetFileName(file).Split('.')[0];
            foreach (var (kind, work) in Works(routine, book, i).Where(w => only is null || w.Kind.StartsWith(only, StringComparison.Ordinal)))
            {
                rows.Add((kind, name, work()));
                Console.WriteLine($"{name} {kind}: {rows[^1].Time}");
            }
        }

        Console.WriteLine();
        Console.WriteLine("Seconds: median (least [quartiles] greatest)");
        foreach (var kind in rows.GroupBy(r => r.Kind.Split(':')[0], StringComparer.Ordinal))
        {
            Line(kind.Key, "first, clock", kind.Select(r => r.Time.First));
            Line(kind.Key, "first, processor", kind.Select(r => r.Time.FirstWork));
            Line(kind.Key, "end, clock", kind.Select(r => r.Time.End));
            Line(kind.Key, "end, processor", kind.Select(r => r.Time.EndWork));
            Console.WriteLine($"{kind.Key}: {kind.Count(r => r.Time.End is not null)} of {kind.Count()} complete");
        }

        return 0;
    }

    private static void Line(string kind, string what, IEnumerable<double?> seconds) =>
        Console.WriteLine($"{kind}, {what}: {Quartiles.Of(seconds)?.ToText("0.00") ?? "none"}");

    private static IEnumerable<(string Kind, Func<Timing> Work)> Works(Routine routine, Book book, int index)
    {
        yield return ("alternatives", () => Alternatives(routine, book, index));
        yield return ("repair", () => Repaired(Breaks.Two(routine, book, index + 1), book));
        var kind = index % BriefChanges.Kinds.Count;
        yield return ("revise: " + BriefChanges.Kinds[kind], () => Revised(routine, BriefChanges.Of(new Scene(routine.Brief, book), routine, kind), book));
    }

    /// <summary>Five alternatives to the stored routine round two of its moves: in turn where they are, within ten counts, anywhere.</summary>
    private static Timing Alternatives(Routine routine, Book book, int index)
    {
        var start = routine.Moves[Kept].Start;
        var moment = (index % 3) switch
        {
            0 => Solver.Reworking.Kept.Run(routine, Kept, Kept + 1),
            1 => Solver.Reworking.Kept.Run(routine, Kept, Kept + 1, start - new HalfCounts(10), start + new HalfCounts(10)),
            _ => Solver.Reworking.Kept.Run(routine, Kept, Kept + 1, null, null),
        };
        var brief = routine.Brief with { Moments = [.. routine.Brief.Moments, moment] };
        var watch = new Watch();
        var result = AlternativeSearch.Of(brief, book, new AlternativesOptions { Time = TimeSpan.FromSeconds(60) }, [routine], (_, _) => watch.Answer());
        return watch.Ended(result.Found.Count == 5, string.Create(CultureInfo.InvariantCulture, $"{result.Found.Count} of {result.Seen}"));
    }

    private static Timing Repaired(Routine broken, Book book)
    {
        var watch = new Watch();
        var result = Repair.Of(broken, book, new RepairOptions(), _ => watch.Answer());
        return watch.Ended(result.Repaired is not null, result.Repaired is { } r ? Told(r) : "none");
    }

    private static Timing Revised(Routine routine, Brief brief, Book book)
    {
        var watch = new Watch();
        var result = Revise.Of(routine, brief, book, new ReviseOptions(), _ => watch.Answer());
        return watch.Ended(result.Revised is not null, result.Revised is { } r ? Told(r) : result.Clash.Count > 0 ? "clash: " + result.Clash[0] : "none");
    }

    private static string Told(Reworked reworked) => string.Create(CultureInfo.InvariantCulture, $"{reworked.Change.Changed} moves change, {reworked.Change.Shift} half counts");

    private sealed record Timing(double? First, double? FirstWork, double? End, double? EndWork, string Told)
    {
        public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"first {First:0.00} s ({FirstWork:0.00}), end {End:0.00} s ({EndWork:0.00}), {Told}");
    }

    private sealed class Watch
    {
        private readonly Stopwatch clock = Stopwatch.StartNew();
        private readonly double began = Work();
        private double? first;
        private double? firstWork;

        public void Answer()
        {
            first ??= clock.Elapsed.TotalSeconds;
            firstWork ??= Work() - began;
        }

        public Timing Ended(bool complete, string told) => new(first, firstWork, complete ? clock.Elapsed.TotalSeconds : null, complete ? Work() - began : null, told);

        private static double Work()
        {
            using var own = Process.GetCurrentProcess();
            return own.TotalProcessorTime.TotalSeconds;
        }
    }
}

using System.Diagnostics;
using System.Globalization;
using Generator.Domain;
using Generator.Library;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Solver.Alternatives;

namespace Generator.Benchmarks.Filling;

/// <summary>
/// Twelve windows of five moves in routines of some forty, drafted from stored briefs, everything before and behind them locked: how many can be filled otherwise than they were, and how
/// soon. Options: <c>--time 4</c> (seconds each), <c>--slip 0</c> (counts by which what comes behind may be later; freely when it is less than 0), <c>--open 1</c> (windows in one routine, filled at
/// once: with 2 there are three locked stretches).
/// </summary>
internal static class WindowRun
{
    public const int Windows = 12;

    private const int First = 8, Apart = 2;

    public static int All(string[] args)
    {
        var options = args.Chunk(2).Where(c => c.Length == 2).ToDictionary(c => c[0], c => int.Parse(c[1], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture), StringComparer.Ordinal);
        var took = Took(options.GetValueOrDefault("--slip", 0), options.GetValueOrDefault("--length", 5), options.GetValueOrDefault("--time", 4), options.GetValueOrDefault("--open", 1));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{took.Count} of {Windows} windows, median {(took.Count > 0 ? took[took.Count / 2] : 0):0.000} s, worst {(took.Count > 0 ? took[^1] : 0):0.000} s"));
        return took.Count == Windows ? 0 : 1;
    }

    /// <summary>Seconds that each window took that could be filled otherwise, the least first.</summary>
    public static IReadOnlyList<double> Took(int slip, int length, int time, int open = 1)
    {
        var book = LongRoutine.Book();
        var took = new List<double>();
        for (var i = 0; i < Windows; i++)
        {
            var name = string.Create(CultureInfo.InvariantCulture, $"40x4-{i + 1:00}");
            var routine = FillRun.Draft(name, book) ?? throw new InvalidOperationException($"{name} is not drafted.");

            // With several windows in one routine they begin sooner, and what stands between two is as long as one.
            var first = First + (Apart * i * (open > 1 ? 0 : 1));
            (int Sooner, int Later)? behind = slip < 0 ? null : (0, 2 * slip);
            var starts = Enumerable.Range(0, open).Select(w => first + length + (2 * w * length)).ToList();
            IReadOnlyList<LockedStretch> locked = [new(0, first - 1, (0, 0)), .. starts.Select((from, w) => new LockedStretch(from, w + 1 < open ? from + length - 1 : routine.Moves.Count - 1, behind))];
            using var ends = new CancellationTokenSource(TimeSpan.FromSeconds(time));
            var clock = Stopwatch.StartNew();
            var other = new Refill(routine, locked, book).Ways(1, ends.Token).TakeWhile(_ => !ends.IsCancellationRequested).OfType<Routine>()
                .FirstOrDefault(way => Enumerable.Range(0, open).All(w => !Has(way, [.. routine.Moves.Skip(first + (2 * w * length)).Take(length)])));
            var seconds = clock.Elapsed.TotalSeconds;
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name} {open} x {length} moves from {first + 1} on: {(other is null ? "nothing" : $"{seconds:0.000} s")}"));
            if (other is not null)
            {
                Check(routine, other, locked, book);
                took.Add(seconds);
            }
        }

        took.Sort();
        return took;
    }

    private static (int?, string?, string?, string?) Deed(Move m) => (m.Attacker, m.Attack, m.Technique, m.Reaction);

    /// <summary>Moves of a window stand in a way as they were.</summary>
    private static bool Has(Routine way, IReadOnlyList<Move> window) =>
        Enumerable.Range(0, Math.Max(0, way.Moves.Count - window.Count + 1)).Any(i => window.Select((m, k) => Deed(m) == Deed(way.Moves[i + k])).All(same => same));

    /// <summary>Refuses a way that is not clean, or in which something that is locked is not as it was.</summary>
    private static void Check(Routine old, Routine way, IReadOnlyList<LockedStretch> locked, Book book)
    {
        var at = -1;
        foreach (var (stretch, was) in locked.SelectMany(l => Enumerable.Range(l.First, l.Last - l.First + 1).Select(i => (l, old.Moves[i]))))
        {
            at = way.Moves.ToList().FindIndex(at + 1, now => Deed(was) == Deed(now) && now.Start.Value - was.Start.Value is var late
                && (stretch.Slip is not { } slip || (late >= slip.Sooner && late <= slip.Later)));
            if (at < 0)
            {
                throw new InvalidOperationException($"A locked move is not where it may be: {was}.");
            }
        }

        if (!Audit.Of(new Scene(old.Brief, book), way).IsClean)
        {
            throw new InvalidOperationException("A way is not clean.");
        }
    }
}

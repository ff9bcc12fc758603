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
/// soon. Options: <c>--time 4</c> (seconds each), <c>--slip 0</c> (counts by which what comes behind may be later; freely when it is less than 0).
/// </summary>
internal static class WindowRun
{
    public const int Windows = 12;

    private const int First = 8, Apart = 2;

    public static int All(string[] args)
    {
        var options = args.Chunk(2).Where(c => c.Length == 2).ToDictionary(c => c[0], c => int.Parse(c[1], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture), StringComparer.Ordinal);
        var took = Took(options.GetValueOrDefault("--slip", 0), options.GetValueOrDefault("--length", 5), options.GetValueOrDefault("--time", 4));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{took.Count} of {Windows} windows, median {(took.Count > 0 ? took[took.Count / 2] : 0):0.000} s"));
        return took.Count == Windows ? 0 : 1;
    }

    /// <summary>Seconds that each window took that could be filled otherwise, the least first.</summary>
    public static IReadOnlyList<double> Took(int slip, int length, int time)
    {
        var book = LongRoutine.Book();
        var took = new List<double>();
        for (var i = 0; i < Windows; i++)
        {
            var name = string.Create(CultureInfo.InvariantCulture, $"40x4-{i + 1:00}");
            var routine = FillRun.Draft(name, book) ?? throw new InvalidOperationException($"{name} is not drafted.");
            var first = First + (Apart * i);
            IReadOnlyList<LockedStretch> locked = [new(0, first - 1, (0, 0)), new(first + length, routine.Moves.Count - 1, slip < 0 ? null : (0, 2 * slip))];
            using var ends = new CancellationTokenSource(TimeSpan.FromSeconds(time));
            var clock = Stopwatch.StartNew();
            var other = new Refill(routine, locked, book).Ways(1, ends.Token).TakeWhile(_ => !ends.IsCancellationRequested).OfType<Routine>().FirstOrDefault();
            var seconds = clock.Elapsed.TotalSeconds;
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name} moves {first + 1} to {first + length}: {(other is null ? "nothing" : $"{seconds:0.000} s")}"));
            if (other is not null)
            {
                Check(routine, other, locked, book);
                took.Add(seconds);
            }
        }

        took.Sort();
        return took;
    }

    /// <summary>Refuses a way that is not clean, or in which something that is locked is not as it was.</summary>
    private static void Check(Routine old, Routine way, IReadOnlyList<LockedStretch> locked, Book book)
    {
        static (int?, string?, string?, string?) Deed(Move m) => (m.Attacker, m.Attack, m.Technique, m.Reaction);
        var (head, behind) = (locked[0].Last + 1, locked[1]);
        var stays = Enumerable.Range(0, head).Select(i => (Old: i, Now: i))
            .Concat(Enumerable.Range(behind.First, behind.Last - behind.First + 1).Select(i => (Old: i, Now: i + way.Moves.Count - old.Moves.Count)));
        foreach (var (was, now) in stays.Select(s => (old.Moves[s.Old], way.Moves[s.Now])))
        {
            var late = now.Start.Value - was.Start.Value;
            if (Deed(was) != Deed(now) || (behind.Slip is { } slip && (late < slip.Sooner || late > slip.Later)))
            {
                throw new InvalidOperationException($"A locked move is not as it was: {was} is now {now}.");
            }
        }

        if (!Audit.Of(new Scene(old.Brief, book), way).IsClean)
        {
            throw new InvalidOperationException("A way is not clean.");
        }
    }
}

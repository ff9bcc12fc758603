using System.Diagnostics;
using System.Globalization;
using Generator.Domain;
using Generator.Solver.Completing;

namespace Generator.Benchmarks.Filling;

/// <summary>
/// Twelve windows of five moves in routines of some forty, drafted from stored briefs, everything before and behind them locked: how many can be filled otherwise than they were, and how
/// soon. Options: <c>--time 4</c> (seconds each), <c>--slip 0</c> (counts by which what comes behind may be later; freely when it is less than 0).
/// </summary>
internal static class WindowRun
{
    private const int Windows = 12, Length = 5, First = 8, Apart = 2;

    public static int All(string[] args)
    {
        var options = args.Chunk(2).Where(c => c.Length == 2).ToDictionary(c => c[0], c => int.Parse(c[1], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture), StringComparer.Ordinal);
        var slip = options.GetValueOrDefault("--slip", 0);
        var book = LongRoutine.Book();
        var took = new List<double>();
        for (var i = 0; i < Windows; i++)
        {
            var name = string.Create(CultureInfo.InvariantCulture, $"40x4-{i + 1:00}");
            var routine = FillRun.Draft(name, book) ?? throw new InvalidOperationException($"{name} is not drafted.");
            var first = First + (Apart * i);
            IReadOnlyList<LockedStretch> locked = [new(0, first - 1, (0, 0)), new(first + Length, routine.Moves.Count - 1, slip < 0 ? null : (0, 2 * slip))];
            using var ends = new CancellationTokenSource(TimeSpan.FromSeconds(options.GetValueOrDefault("--time", 4)));
            var clock = Stopwatch.StartNew();
            var other = new Refill(routine, locked, book).Ways(1, ends.Token).TakeWhile(_ => !ends.IsCancellationRequested).OfType<Completed>().FirstOrDefault(c => Differs(routine, c.Routine, first));
            var seconds = clock.Elapsed.TotalSeconds;
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name} moves {first + 1} to {first + Length}: {(other is null ? "nothing" : $"{seconds:0.000} s")}"));
            if (other is not null)
            {
                took.Add(seconds);
            }
        }

        took.Sort();
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{took.Count} of {Windows} windows, median {(took.Count > 0 ? took[took.Count / 2] : 0):0.000} s"));
        return took.Count == Windows ? 0 : 1;
    }

    private static bool Differs(Routine old, Routine now, int first) =>
        old.Moves.Count != now.Moves.Count || Enumerable.Range(first, Length).Any(i => !string.Equals(old.Moves[i].Technique, now.Moves[i].Technique, StringComparison.Ordinal));
}

using System.Diagnostics;
using Generator.Domain;
using Generator.Library;
using Generator.Rules;
using Generator.Solver.Refuting;
using Generator.Rules.Judging;
using Generator.Solver.Reworking;

namespace Generator.Solver.Repairing;

/// <summary>
/// Finds the smallest change that leaves nothing unsafe or broken in a routine: fewest moves first, of those the mildest (<see cref="Mildness"/>), then fewest
/// counts, then fewest points.
/// </summary>
public static class Repair
{
    private const long OneMildness = 1_000_000_000;

    private const long Counts = 10_000;

    /// <summary>Repairs a routine; a clean one comes back as it is.</summary>
    /// <param name="routine">The routine, with its brief.</param>
    /// <param name="book">The library.</param>
    /// <param name="options">Seed, time and moves that stay.</param>
    /// <param name="better">Told of every better repair.</param>
    /// <param name="stop">Ends the search; the best so far is returned.</param>
    public static RepairResult Of(Routine routine, Book book, RepairOptions options, Action<Reworked>? better = null, CancellationToken stop = default)
    {
        var clock = Stopwatch.StartNew();
        var scene = new Scene(routine.Brief, book);
        var verdict = Audit.Of(scene, routine);
        if (verdict.IsClean)
        {
            return new RepairResult
            {
                Repaired = new Reworked(scene, routine, routine, verdict, RoutineChange.Between(routine, routine)),
                WasClean = true,
                FewestProven = true,
                SmallerTried = true,
                Elapsed = clock.Elapsed,
            };
        }

        var brief = routine.Brief with { Moments = [.. routine.Brief.Moments, .. options.Keep.Select(k => Kept.Run(routine, k.First, k.Last))] };
        var original = Original.Of(routine, brief, book);
        if (Refutations.Reasons(original.Search) is { Count: > 0 } clash)
        {
            return new RepairResult { Clash = clash, Elapsed = clock.Elapsed };
        }

        using var ends = CancellationTokenSource.CreateLinkedTokenSource(stop);
        ends.CancelAfter(options.Time);
        var bound = Hopeless.Count(original);
        var reworker = new Reworker(original, new MoveCosts(), Rank) { Bound = bound, IsMildest = r => Mildness.Of(r) % Mildness.OneMove == 0, Better = better ?? (_ => { }) };
        var tried = reworker.Run(options.Seed, ends.Token);
        return new RepairResult
        {
            Repaired = reworker.Best is { } best ? Told(scene, routine, Settling.Of(original, best.Routine, stop) with { Brief = routine.Brief }) : null,
            SmallerTried = tried,
            FewestProven = reworker.Best?.Change.Changed <= bound,
            Elapsed = clock.Elapsed,
        };
    }

    /// <summary>Told against the routine and the brief as they were given.</summary>
    private static Reworked Told(Scene scene, Routine old, Routine repaired) =>
        new(scene, old, repaired, Audit.Of(scene, repaired), RoutineChange.Between(old, repaired));

    private static long Rank(Reworked reworked) => (Mildness.Of(reworked) * OneMildness) + (reworked.Change.Shift * Counts) + reworked.Verdict.Points;
}

using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;

namespace Generator.Solver.Reworking;

/// <summary>
/// Brings the moves of a changed routine that stay as near as can be to how they were: every choice of counts, each move with its old cue, linger
/// and bearing or those of the repair, is tried in depth, cheapest first, as long as it is cheaper than the best.
/// </summary>
internal sealed class Settling
{
    /// <summary>Moves replayed before it is left at the best so far.</summary>
    private const int MostSteps = 20_000;

    private const int FarthestShift = 12;

    private readonly Scene scene;
    private readonly Move?[] old;
    private readonly IReadOnlyList<Move> now;
    private readonly CancellationToken stop;
    private readonly Move[] chosen;
    private IReadOnlyList<Placement> placements = [];
    private int steps;
    private int least;
    private Routine? best;

    private Settling(Original original, Routine repaired, RoutineChange change, CancellationToken stop)
    {
        (scene, now, this.stop, least) = (original.Scene, repaired.Moves, stop, change.Shift);
        old = new Move?[now.Count];
        foreach (var stays in change.Moves.Where(m => m.Kind <= ChangeKind.Shifted))
        {
            old[stays.Now] = original.Routine.Moves[stays.Old];
        }

        chosen = [.. now];
    }

    /// <summary>The same repair with fewer counts, or itself when none was found.</summary>
    public static Routine Of(Original original, Routine repaired, CancellationToken stop)
    {
        var change = RoutineChange.Between(original.Routine, repaired);
        var settling = new Settling(original, repaired, change, stop);
        settling.Begin(repaired, original.Routine.Placements, 0);
        if (change.Opening > 0)
        {
            settling.Begin(repaired, repaired.Placements, change.Opening);
        }

        return settling.best ?? repaired;
    }

    private void Begin(Routine repaired, IReadOnlyList<Placement> opening, int cost)
    {
        placements = opening;
        foreach (var (move, more) in Ways(0, 0, cost))
        {
            var open = Replay.Open(scene, placements, Replay.LeadIn(scene, placements, Row.Of(move, scene)));
            Go(repaired, 0, move, open, Score.Begin(scene, open), cost + more);
        }
    }

    private void Go(Routine repaired, int index, Move move, FightState state, Score score, int cost)
    {
        if (cost >= least || ++steps > MostSteps || stop.IsCancellationRequested)
        {
            return;
        }

        chosen[index] = move;
        var step = Replay.Step(scene, state, Row.Of(move, scene));
        if (score.Allowed(scene, step) is not { } after)
        {
            return;
        }

        if (index + 1 == now.Count)
        {
            if (after.Close(scene, step.After).Forbidden == 0)
            {
                (least, best) = (cost, repaired with { Placements = placements, Moves = [.. chosen] });
            }

            return;
        }

        foreach (var (next, more) in Ways(index + 1, step.After.Time, cost))
        {
            Go(repaired, index + 1, next, step.After, after, cost + more);
        }
    }

    /// <summary>A move with everything that may be chosen of it, and what that costs; the cheapest first.</summary>
    private IEnumerable<(Move Move, int Cost)> Ways(int index, int earliest, int cost)
    {
        if (old[index] is not { } was)
        {
            return Enumerable.Range(0, Pace.DeadAirBreaks.Value + 1).Select(gap => (now[index] with { Start = new HalfCounts(earliest + gap) }, 0));
        }

        var farthest = Math.Min(FarthestShift, least - cost - 1);
        return Enumerable.Range(-farthest, Math.Max(0, (2 * farthest) + 1))
            .Select(shift => new HalfCounts(was.Start.Value + shift))
            .Where(start => start.Value >= earliest)
            .SelectMany(start => new[] { was with { Start = start }, now[index] with { Start = start } }.Distinct())
            .Select(move => (move, RoutineChange.ShiftOf(was, move)))
            .OrderBy(w => w.Item2);
    }
}

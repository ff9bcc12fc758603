using Generator.Domain;
using Generator.Library;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Solver.Constructing;

namespace Generator.Solver.Alternatives;

/// <summary>
/// Fills the moves of a routine that are not locked anew, so that what is locked before and behind them stays: a window with both ends fixed, or several,
/// one after the other from the last to the first. Each begins in the situation in which the routine was there, and is a beam behind each of whose beginnings
/// the rest of the routine is replayed.
/// </summary>
public sealed class Refill
{
    private static readonly int[] Widths = [2, 4, 12, 24, 48];

    /// <summary>Beams tried for one window before it stays as it was.</summary>
    private const int Tries = 4;

    private readonly Routine routine;
    private readonly Ground ground;
    private readonly Lazy<IReadOnlyList<Node>> walked;
    private readonly IReadOnlyList<LockedStretch> locked;

    /// <param name="routine">A routine without findings that are unsafe or broken, with its brief.</param>
    /// <param name="locked">What stays.</param>
    /// <param name="book">The library.</param>
    public Refill(Routine routine, IReadOnlyList<LockedStretch> locked, Book book)
    {
        (this.routine, this.locked) = (StanceNotes.LeftOut(routine), locked);
        var brief = routine.Brief;
        var scene = new Scene(brief with { Length = brief.Length ?? new Length(null, Math.Max(1, routine.Moves.Count), 1), Ending = brief.Ending ?? new Ending([], null) }, book);
        var outs = Replay.Of(scene, this.routine) is { Count: > 0 } steps ? steps[^1].After.Attackers.Select(a => a.OutAt >= 0) : Enumerable.Repeat(false, scene.Cast);
        ground = new Ground(scene, [.. outs]);
        walked = new Lazy<IReadOnlyList<Node>>(() => RoutinePath.Of(ground, this.routine));
    }

    /// <summary>Ways to do it, one after the other, as long as they are asked for; null for an attempt that came to nothing.</summary>
    /// <param name="seed">Other seeds give other ways.</param>
    /// <param name="stop">Ends the attempt in hand.</param>
    /// <param name="lane">Which of several that search at once.</param>
    public IEnumerable<Routine?> Ways(int seed, CancellationToken stop, int lane = 1)
    {
        for (var round = 0; ; round++)
        {
            yield return Way(new Dice(Dice.SeedOf(seed, lane, round)), round, stop);
        }
    }

    private Routine? Way(Dice dice, int round, CancellationToken stop)
    {
        var now = routine;

        // Which of the moves that stay each move is; −1 for one that is to be filled.
        List<int> stays = [.. Enumerable.Range(0, routine.Moves.Count).Select(i => locked.Any(l => l.Has(i)) ? i : -1)];
        for (var last = stays.Count - 1; last >= 0; last--)
        {
            if (stays[last] >= 0)
            {
                continue;
            }

            var (first, behind) = (last, stays[(last + 1)..]);
            while (first > 0 && stays[first - 1] < 0)
            {
                first--;
            }

            now = Window(now, first, behind, dice, round, stop) ?? now;
            stays = [.. stays[..first], .. Enumerable.Repeat(-1, now.Moves.Count - first - behind.Count), .. behind];
            last = first;
        }

        return now == routine ? null : now with { Brief = routine.Brief };
    }

    /// <summary>The routine with other moves from one on up to those behind; null where none were found.</summary>
    private Routine? Window(Routine now, int first, List<int> behind, Dice dice, int round, CancellationToken stop)
    {
        var path = ReferenceEquals(now, routine) ? walked.Value : RoutinePath.Of(ground, now);
        if (path.Count <= now.Moves.Count)
        {
            return null;
        }

        var joint = now.Moves.Count - behind.Count;
        var tail = behind.Count == 0 ? null : new Tail(ground.Aims, path, joint, joint) { Lock = new TailLock(first, joint + 1, [.. behind.Select(Within)]) };
        for (var i = 0; i < Tries && !stop.IsCancellationRequested; i++)
        {
            var beam = new Beam(ground, dice, ground.Aims.Width(Widths[(round + i) % Widths.Length]), Beam.Noise(dice), int.MaxValue - 1, tail: tail);
            if (beam.Run(first == 0 ? ground.Openings(now.Placements) : [path[first]], _ => { }, stop) is { } finish)
            {
                return Draftsman.RoutineOf(ground.Scene, finish);
            }
        }

        return null;
    }

    /// <summary>When a move of the routine may start; anything for one that may freely or that was filled anew.</summary>
    private (int Earliest, int Latest) Within(int move) => move >= 0 && locked.First(l => l.Has(move)).Slip is { } slip
        ? (routine.Moves[move].Start.Value + slip.Sooner, routine.Moves[move].Start.Value + slip.Later) : (0, int.MaxValue);
}

using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Library;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;
using Generator.Solver.Constructing;

namespace Generator.Solver.Completing;

/// <summary>
/// Fills the moves of a routine that are not locked anew, so that what is locked before and behind them stays: a window with both ends fixed, or several. The
/// search is drawn towards the situation in which the next locked stretch began.
/// </summary>
public sealed class Refill
{
    private readonly Routine routine;
    private readonly Book book;
    private readonly IReadOnlyList<LockedStretch> locked;
    private readonly (FightState State, int[] Threats)[] before;

    /// <param name="routine">A routine without findings that are unsafe or broken, with its brief.</param>
    /// <param name="locked">What stays.</param>
    /// <param name="book">The library.</param>
    public Refill(Routine routine, IReadOnlyList<LockedStretch> locked, Book book)
    {
        (this.routine, this.locked, this.book) = (StanceNotes.LeftOut(routine), locked, book);
        var scene = new Scene(routine.Brief, book);
        before = [.. Replay.Of(scene, this.routine).Select(s => (s.Before, Enumerable.Range(0, scene.Cast).Select(a => Replay.ThreatTime(scene, s.Before, a)).ToArray()))];
    }

    /// <summary>Ways to do it, one after the other, as long as they are asked for; null for an attempt that came to nothing.</summary>
    /// <param name="seed">Other seeds give other ways.</param>
    /// <param name="stop">Ends the attempt in hand.</param>
    public IEnumerable<Completed?> Ways(int seed, CancellationToken stop)
    {
        var kinds = new Dictionary<int, (Complete Complete, ISketchPattern Pattern)?>();
        for (var round = 0; ; round++)
        {
            // As many moves as there were, or now and then one more or less.
            var more = (round % 4) switch { 2 => -1, 3 => 1, _ => 0 };
            if (!kinds.TryGetValue(more, out var kind))
            {
                kinds[more] = kind = Sketched(more) is { } sketched ? (new Complete(sketched.Sketch, book, stop), new Pattern(this, sketched.Joints)) : null;
            }

            yield return kind is { } it ? it.Complete.Strictly(round / 2, new Dice(Dice.SeedOf(seed, 1, round)), it.Pattern) : null;
        }
    }

    /// <summary>The routine as a sketch in which each stretch that is not locked has so many moves more, and for each of its moves the locked one that comes next; null where that leaves no move.</summary>
    private (Sketch Sketch, int[] Joints)? Sketched(int more)
    {
        var (moves, joints) = (new List<SketchMove>(), new List<int>());
        for (var i = 0; i < routine.Moves.Count; i++)
        {
            if (locked.FirstOrDefault(l => l.Has(i)) is { } stretch)
            {
                moves.Add(Kept(routine.Moves[i], i, stretch));
                joints.Add(i);
                continue;
            }

            var last = i;
            while (last + 1 < routine.Moves.Count && !locked.Any(l => l.Has(last + 1)))
            {
                last++;
            }

            var wanted = last - i + 1 + more;
            if (wanted < 1)
            {
                return null;
            }

            for (var n = 0; n < wanted; n++)
            {
                moves.Add(new SketchMove { Line = i + 1 });
                joints.Add(last + 1);
            }

            i = last;
        }

        joints.Add(routine.Moves.Count);
        return (new Sketch { Brief = routine.Brief, Placements = [.. routine.Placements], Moves = moves }, [.. joints]);
    }

    private static SketchMove Kept(Move move, int index, LockedStretch stretch) => new()
    {
        Line = index + 1,
        Attacker = move.Attacker,
        Attack = Cell(move.Attack),
        FollowsUp = move.Attack is null,
        Technique = Cell(move.Technique),
        Reaction = Cell(move.Reaction),
        Count = stretch.Slip is { } slip ? (new HalfCounts(Math.Max(0, move.Start.Value + slip.Sooner)), new HalfCounts(move.Start.Value + slip.Later)) : null,
        From = move.From,
    };

    private static SketchCell? Cell(string? id) => id is null ? null : new SketchCell(id, [id], Firmness.Fixed);

    /// <summary>The routine itself, seen from the moves of the sketch.</summary>
    /// <param name="refill">What it belongs to.</param>
    /// <param name="joints">For each move of the sketch, and behind the last, itself or the locked one that comes next, as a move of the routine.</param>
    private sealed class Pattern(Refill refill, int[] joints) : ISketchPattern
    {
        public double Apart(Beginning begun) => joints[begun.Next] is var joint && joint < refill.before.Length
            ? Nearness.Apart(begun.Node.State, begun.Node.Threats, refill.before[joint].State, refill.before[joint].Threats) : 0;

        public Bearing? From(int move) => joints[move] is var joint && joint != joints[move + 1] && joint < refill.before.Length && refill.routine.Moves[joint] is { Attack: not null, Attacker: { } who }
            ? new Bearing(refill.before[joint].State.Attackers[who].Bearing) : null;
    }
}

using Generator.Domain.Sketches;

namespace Generator.Domain.Edits;

/// <summary>Makes edits. The same edits on the same sketch give the same sketch.</summary>
public static class Editing
{
    /// <summary>Most moves of one sketch, as of one fight.</summary>
    public const int MostMoves = 500;

    /// <summary>The sketch after the edit.</summary>
    /// <exception cref="EditException">The sketch has no such move or attacker, or would grow too long.</exception>
    public static Sketch Apply(Sketch sketch, Edit edit)
    {
        if (edit.Needs > sketch.Moves.Count || edit.Starts < 0)
        {
            throw new EditException($"There is no such move; the fight has {FormattableString.Invariant($"{sketch.Moves.Count}")}.", "Maybe it was taken out meanwhile.");
        }

        return edit switch
        {
            Write write => With(sketch, write.At, write.At, m => Written(m, write.Column, write.Said)),
            Insert insert => Numbered(sketch, [.. sketch.Moves.Take(insert.Before), .. insert.New, .. sketch.Moves.Skip(insert.Before)]),
            Delete delete => Numbered(sketch, [.. sketch.Moves.Take(delete.First), .. sketch.Moves.Skip(Math.Max(delete.First, delete.Last + 1))]),
            Swap swap => Swapped(sketch, swap.First),
            Shift shift => With(sketch, shift.From, sketch.Moves.Count - 1, m => At(m, m.Count is { } count ? (Later(count.First, shift.By), Later(count.Last, shift.By)) : null)),
            Padlock padlock => With(sketch, padlock.First, padlock.Last, m => padlock.Of is { } of && m.Attacker != of.Attacker ? m : Locked(m, padlock)),
            Clear clear => With(sketch, clear.First, clear.Last, Cleared),
            Place place => Placed(sketch, place),
            Recast recast => Recast(sketch, recast),
            Take take => Numbered(take.After, take.After.Moves),
            _ => throw new ArgumentOutOfRangeException(nameof(edit)),
        };
    }

    private static Sketch With(Sketch sketch, int first, int last, Func<SketchMove, SketchMove> change) =>
        sketch with { Moves = [.. sketch.Moves.Select((m, i) => i >= first && i <= last ? change(m) : m)] };

    private static Sketch Numbered(Sketch sketch, IReadOnlyList<SketchMove> moves) => moves.Count > MostMoves
        ? throw new EditException(FormattableString.Invariant($"A fight has at most {MostMoves} moves."), "Maybe cut it into several fights.")
        : sketch with { Moves = [.. moves.Select((m, i) => m.Line == i + 1 ? m : m with { Line = i + 1 })] };

    private static SketchMove Written(SketchMove move, Column column, SketchMove said) => column switch
    {
        Column.Count => At(move, said.Count),
        Column.Attacker => move with { Attacker = said.Attacker, From = said.Attacker is null ? null : move.From },
        Column.By => move with { ByAlly = said.ByAlly },
        Column.From => move with { From = said.From },
        Column.Cue => move with { Cue = said.Cue },
        Column.Attack => move with { Attack = said.Attack, FollowsUp = said.FollowsUp, IsSuffered = move.IsSuffered && said.Attack is not null },
        Column.Technique => move with { Technique = said.Technique, IsSuffered = said.IsSuffered, Open = said.Open },
        Column.Reaction => move with { Reaction = said.Reaction },
        Column.Hurts => move with { Hurts = said.Hurts },
        Column.To => move with { To = said.To },
        Column.Stance => move with { Stance = said.Stance },
        Column.Linger => move with { Linger = said.Linger },
        Column.Note => move with { Note = said.Note },
        _ => throw new ArgumentOutOfRangeException(nameof(column)),
    };

    private static Sketch Swapped(Sketch sketch, int first)
    {
        var (a, b) = (sketch.Moves[first], sketch.Moves[first + 1]);
        return Numbered(sketch, [.. sketch.Moves.Take(first), At(b, a.Count), At(a, b.Count), .. sketch.Moves.Skip(first + 2)]);
    }

    /// <summary>The move at another count; what it hurts stays hurt for as long as before, and until after its start.</summary>
    private static SketchMove At(SketchMove move, (HalfCounts First, HalfCounts Last)? count)
    {
        if (move.Hurts is not { } hurts || count is not { } now)
        {
            return move with { Count = count };
        }

        var until = hurts.Until.Value + (move.Count is { } was ? now.First.Value - was.First.Value : 0);
        return move with { Count = count, Hurts = hurts with { Until = new HalfCounts(Math.Max(until, now.First.Value + 1)) } };
    }

    private static HalfCounts Later(HalfCounts count, int by) => new(Math.Clamp(count.Value + by, 0, HalfCounts.FromCounts(9998).Value));

    private static SketchMove Locked(SketchMove move, Padlock padlock)
    {
        return move with
        {
            Attack = Of(Column.Attack, move.Attack),
            Technique = Of(Column.Technique, move.Technique),
            Reaction = Of(Column.Reaction, move.Reaction),
        };

        SketchCell? Of(Column column, SketchCell? cell) =>
            cell is null || (padlock.Only is { } only && only != column) ? cell : cell with { Firmness = padlock.IsLocked ? Firmness.Fixed : Firmness.Said };
    }

    private static SketchMove Cleared(SketchMove move)
    {
        return move.IsGap ? move : move with { Attack = Kept(move.Attack), Technique = Kept(move.Technique), Reaction = Kept(move.Reaction), IsSuffered = false, Stance = null };

        static SketchCell? Kept(SketchCell? cell) => cell is { Firmness: Firmness.Fixed } ? cell : null;
    }

    private static Sketch Recast(Sketch sketch, Recast recast)
    {
        if (recast.Was.Count != recast.Brief.Attackers.Count || recast.Was.Any(w => w < 0 || w >= sketch.Placements.Count) || recast.Was.OfType<int>().Distinct().Count() != recast.Was.OfType<int>().Count())
        {
            throw new EditException("Nobody can say who of the attackers is who.", "Maybe the brief has changed meanwhile.");
        }

        return sketch with
        {
            Brief = recast.Brief,
            Placements = [.. recast.Was.Select(w => w is { } was ? sketch.Placements[was] : null)],
            Moves = [.. sketch.Moves.Select(m => Fitted(m, recast, sketch.Brief.Marks))],
        };
    }

    /// <summary>Nobody comes from anywhere in a move that nobody is left for, no ally acts who is gone, and no mark is gone to that is not there.</summary>
    private static SketchMove Fitted(SketchMove move, Recast recast, IReadOnlyList<HeroMark> marks)
    {
        var attacker = move.Attacker is { } who ? recast.Was.Index().Where(w => w.Item == who).Select(w => (int?)w.Index).FirstOrDefault() : null;
        var to = move.To is { } mark && recast.Brief.Travels ? MarkNow(mark, marks, recast.Brief.Marks) : null;
        return move with { Attacker = attacker, From = attacker is null ? null : move.From, To = to, ByAlly = move.ByAlly && recast.Brief.Ally is not null };
    }

    /// <summary>A mark that has another name or place is still itself; where marks come or go, one is the same by its name. Null where it is gone.</summary>
    private static int? MarkNow(int mark, IReadOnlyList<HeroMark> was, IReadOnlyList<HeroMark> now) => mark >= was.Count ? null
        : was.Count == now.Count ? mark
        : now.Index().Where(m => m.Item.IsCalled(was[mark].Name)).Select(m => (int?)m.Index).FirstOrDefault();

    private static Sketch Placed(Sketch sketch, Place place) => place.Attacker < 0 || place.Attacker >= sketch.Placements.Count
        ? throw new EditException("There is no such attacker.", "Maybe the brief has changed meanwhile.")
        : sketch with { Placements = [.. sketch.Placements.Select((p, i) => i == place.Attacker ? place.At : p)] };
}

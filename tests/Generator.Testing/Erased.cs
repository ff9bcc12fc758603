using Generator.Domain;
using Generator.Domain.Sketches;

namespace Generator.Testing;

/// <summary>Routines as sketches, some of their cells left open.</summary>
public static class Erased
{
    /// <summary>The routine as a sketch that leaves nothing open but what no sketch tells.</summary>
    public static Sketch Nothing(Routine routine) => Of(routine, new Chance(0), Erasing.Mixed, 0);

    /// <summary>The routine as a sketch from which a share of the cells is gone.</summary>
    /// <param name="routine">Its ids are those of the library.</param>
    /// <param name="chance">Which ones.</param>
    /// <param name="erasing">Of which kind.</param>
    /// <param name="percent">How many of a hundred.</param>
    public static Sketch Of(Routine routine, Chance chance, Erasing erasing, int percent)
    {
        var moves = routine.Moves;
        var length = erasing == Erasing.Stretch ? Math.Max(1, moves.Count * percent / 100) : 0;
        var first = length == 0 ? 0 : chance.Whole(0, moves.Count - length);
        bool Goes(Erasing kind) => (erasing == kind || erasing == Erasing.Mixed) && chance.Percent(percent);
        return new Sketch
        {
            Brief = routine.Brief,
            Placements = [.. routine.Placements],
            Moves = [.. moves.Select((m, i) => i >= first && i < first + length ? new SketchMove { Line = i + 1 } : Of(m, i, Goes))],
        };
    }

    private static SketchMove Of(Move move, int index, Func<Erasing, bool> goes)
    {
        var attack = goes(Erasing.Attacks);
        var technique = goes(Erasing.Techniques);
        var attacker = goes(Erasing.Attackers);
        return new SketchMove
        {
            Line = index + 1,
            Attacker = attacker ? null : move.Attacker,
            Attack = attack ? null : Cell(move.Attack),
            FollowsUp = move.Attack is null && !attack,
            Technique = technique ? null : goes(Erasing.Sides) && move.Technique is { } t && Other(t) is { } other ? new SketchCell(t, [t, other]) : Cell(move.Technique),
            Reaction = goes(Erasing.Reactions) ? null : Cell(move.Reaction),
            Count = goes(Erasing.Counts) ? null : (move.Start, move.Start),
            From = attacker ? null : move.From,
            To = technique ? null : move.To,
        };
    }

    /// <summary>The same technique with the other side; null where it has none.</summary>
    private static string? Other(string id) =>
        id.EndsWith("-left", StringComparison.Ordinal) ? id[..^4] + "right" : id.EndsWith("-right", StringComparison.Ordinal) ? id[..^5] + "left" : null;

    private static SketchCell? Cell(string? id) => id is null ? null : new SketchCell(id, [id]);
}

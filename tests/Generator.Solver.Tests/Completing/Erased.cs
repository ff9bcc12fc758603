using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Testing;

namespace Generator.Solver.Tests.Completing;

/// <summary>Routines as sketches, some of their cells left open or written wrongly.</summary>
internal static class Erased
{
    /// <summary>The routine as a sketch from which a share of the cells of each kind is gone.</summary>
    public static Sketch Of(Routine routine, Chance chance, int percent) => new()
    {
        Brief = routine.Brief,
        Placements = [.. routine.Placements],
        Moves = [.. routine.Moves.Select((m, i) => Of(m, i, chance, percent))],
    };

    private static SketchMove Of(Move move, int index, Chance chance, int percent)
    {
        var attack = chance.Percent(percent) ? null : Cell(move.Attack);
        return new SketchMove
        {
            Line = index + 1,
            Attacker = move.Attacker,
            Attack = attack,
            FollowsUp = move.Attack is null && !chance.Percent(percent),
            Technique = chance.Percent(percent) ? null : Cell(move.Technique),
            Reaction = chance.Percent(percent) ? null : Cell(move.Reaction),
            Count = chance.Percent(percent) ? null : (move.Start, move.Start),
            From = move.From,
        };
    }

    private static SketchCell? Cell(string? id) => id is null ? null : new SketchCell(id, [id]);
}

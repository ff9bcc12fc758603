namespace Generator.Domain.Sketches;

/// <summary>A routine in which anything may be left open: notes, or rows with empty cells.</summary>
public sealed record Sketch
{
    /// <summary>Most moves that "…" without a number stands for.</summary>
    public const int OpenMoves = 12;

    public required Brief Brief { get; init; }

    /// <summary>Opening places that were said, one for each attacker; null where nothing was.</summary>
    public required IReadOnlyList<Placement?> Placements { get; init; }

    /// <summary>Moves and gaps in the order written.</summary>
    public required IReadOnlyList<SketchMove> Moves { get; init; }

    /// <summary>A routine in which everything is said; lingers and cues are nobody's words.</summary>
    public static Sketch Of(Routine routine) => new()
    {
        Brief = routine.Brief,
        Placements = [.. routine.Placements],
        Moves =
        [
            .. routine.Moves.Select((move, i) => new SketchMove
            {
                Line = i + 1,
                ByAlly = move.ByAlly,
                Attacker = move.Attacker,
                FollowsUp = move.Attack is null,
                Attack = Cell(move.Attack),
                Technique = Cell(move.Technique),
                Reaction = Cell(move.Reaction),
                Count = (move.Start, move.Start),
                From = move.From,
                Hurts = move.Hurts,
                To = move.To,
            }),
        ],
    };

    private static SketchCell? Cell(string? id) => id is null ? null : new SketchCell(id, [id]);
}

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
}

namespace Generator.Domain;

/// <summary>A fight from the first count to the last, drafted or written by hand, right or wrong.</summary>
public sealed record Routine
{
    public required Brief Brief { get; init; }

    /// <summary>Version of the library it was made with.</summary>
    public string LibraryVersion { get; init; } = string.Empty;

    /// <summary>One for each attacker of the brief, in its order.</summary>
    public required IReadOnlyList<Placement> Placements { get; init; }

    public required IReadOnlyList<Move> Moves { get; init; }
}

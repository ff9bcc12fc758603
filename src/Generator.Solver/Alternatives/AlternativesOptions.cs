namespace Generator.Solver.Alternatives;

/// <summary>How many alternatives, how different and how good.</summary>
public sealed record AlternativesOptions
{
    /// <summary>How many are wanted, 2 to 9. Default 5.</summary>
    public int Number { get; init; } = 5;

    /// <summary>Each two differ in at least this share of the moves outside the hero moments, 1 to 100 percent. Default 30.</summary>
    public int SharePercent { get; init; } = 30;

    /// <summary>None has more points than the best one and this. Default 10.</summary>
    public int Slack { get; init; } = 10;

    /// <summary>Other seeds give other routines. Default 1.</summary>
    public int Seed { get; init; } = 1;

    /// <summary>Moves of the first routine from which they differ that stay as they are; they are the last hero moments of the brief as well.</summary>
    public IReadOnlyList<LockedStretch> Locked { get; init; } = [];

    /// <summary>How long to search at most. Default 30 s.</summary>
    public TimeSpan Time { get; init; } = TimeSpan.FromSeconds(30);
}

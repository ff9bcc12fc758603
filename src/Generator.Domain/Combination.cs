namespace Generator.Domain;

/// <summary>Two or three attacks in a row by one attacker, so soon after one another that the hero has no time for a blow between them.</summary>
public sealed record Combination
{
    public required string Id { get; init; }

    public required string Name { get; init; }

    public IReadOnlyList<string> Aliases { get; init; } = [];

    /// <summary>In their order, 2 or 3.</summary>
    public required IReadOnlyList<CombinationPart> Attacks { get; init; }

    /// <summary>From one contact to the next at most: half a count or one at the usual tempo.</summary>
    public required HalfCounts Gap { get; init; }

    /// <summary>How long the gap lasts at the usual tempo, 0.3 or 0.6 s: at a faster one it is as many half counts as that takes.</summary>
    public required decimal GapSeconds { get; init; }

    /// <summary>What it looks like, in a sentence.</summary>
    public string Note { get; init; } = string.Empty;

    /// <summary>How it is kept safe, in a sentence.</summary>
    public string Safety { get; init; } = string.Empty;
}

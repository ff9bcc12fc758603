namespace Generator.Domain;

/// <summary>One stance as <c>stances.json</c> describes it.</summary>
public sealed record StanceInfo
{
    public required Stance Stance { get; init; }

    public required string Name { get; init; }

    /// <summary>Height of the head as a share of standing height, 0 to 1.</summary>
    public required decimal HeightShare { get; init; }

    /// <summary>The foot in front, if one is.</summary>
    public Side? Lead { get; init; }

    /// <summary>What standing in it asks of each part of the body.</summary>
    public Load Load { get; init; }

    /// <summary>Stances that can be reached between two moves, each with the half counts it takes.</summary>
    public required IReadOnlyList<StanceChange> Changes { get; init; }
}

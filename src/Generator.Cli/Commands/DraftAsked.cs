namespace Generator.Cli.Commands;

/// <summary>What stood on the command line of a draft; null where nothing did.</summary>
internal sealed record DraftAsked
{
    public string? Brief { get; init; }

    public int? Attackers { get; init; }

    public int? Counts { get; init; }

    public int? Moves { get; init; }

    public int? Seed { get; init; }

    public TimeSpan? Time { get; init; }

    public int? Rounds { get; init; }

    public bool Cold { get; init; }

    public string? Out { get; init; }

    public bool Json { get; init; }

    public IReadOnlyList<string> Library { get; init; } = [];

    /// <summary>Something is said that stands instead of a brief.</summary>
    public bool IsQuick => Attackers is not null || Counts is not null || Moves is not null;
}

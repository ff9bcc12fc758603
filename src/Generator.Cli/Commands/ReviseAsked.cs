namespace Generator.Cli.Commands;

/// <summary>What stood on the command line of a revision; null where nothing did.</summary>
internal sealed record ReviseAsked
{
    public string? Routine { get; init; }

    public string? Brief { get; init; }

    public int? CountCost { get; init; }

    public int? TechniqueCost { get; init; }

    public int? OrderCost { get; init; }

    public int? Seed { get; init; }

    public TimeSpan? Time { get; init; }

    public string? Out { get; init; }

    public bool Json { get; init; }

    public IReadOnlyList<string> Library { get; init; } = [];
}

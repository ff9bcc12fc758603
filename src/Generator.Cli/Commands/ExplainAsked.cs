namespace Generator.Cli.Commands;

/// <summary>What stood on the command line of <c>explain</c>; null where nothing did.</summary>
internal sealed record ExplainAsked
{
    public string? File { get; init; }

    public string? Move { get; init; }

    public string? Brief { get; init; }

    public int? Seed { get; init; }

    public TimeSpan? Time { get; init; }

    public string? Out { get; init; }

    public bool Json { get; init; }

    public IReadOnlyList<string> Library { get; init; } = [];
}

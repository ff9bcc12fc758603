namespace Generator.Cli.Options;

/// <summary>What stands on the command line of every command that searches; null where nothing did.</summary>
internal abstract record SearchAsked
{
    public int? Seed { get; init; }

    public TimeSpan? Time { get; init; }

    public string? Out { get; init; }

    public bool Json { get; init; }

    public IReadOnlyList<string> Library { get; init; } = [];
}

using Generator.Cli.Options;

namespace Generator.Cli.Commands;

/// <summary>What stood on the command line of a repair; null where nothing did.</summary>
internal sealed record RepairAsked
{
    public string? Routine { get; init; }

    public string? Brief { get; init; }

    public IReadOnlyList<MoveRange> Keep { get; init; } = [];

    public int? Seed { get; init; }

    public TimeSpan? Time { get; init; }

    public string? Out { get; init; }

    public bool Json { get; init; }

    public IReadOnlyList<string> Library { get; init; } = [];
}

using Generator.Cli.Options;

namespace Generator.Cli.Commands;

/// <summary>What stood on the command line of <c>alternatives</c>; null where nothing did.</summary>
internal sealed record AlternativesAsked : SearchAsked
{
    public string? File { get; init; }

    public string? Brief { get; init; }

    public IReadOnlyList<MoveRange> Keep { get; init; } = [];

    public int? Number { get; init; }

    public int? Differ { get; init; }

    public int? Slack { get; init; }

    public bool Each { get; init; }
}

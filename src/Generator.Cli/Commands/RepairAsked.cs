using Generator.Cli.Options;

namespace Generator.Cli.Commands;

/// <summary>What stood on the command line of a repair; null where nothing did.</summary>
internal sealed record RepairAsked : SearchAsked
{
    public string? Routine { get; init; }

    public string? Brief { get; init; }

    public IReadOnlyList<MoveRange> Keep { get; init; } = [];
}

using Generator.Cli.Options;

namespace Generator.Cli.Commands;

/// <summary>What stood on the command line of a revision; null where nothing did.</summary>
internal sealed record ReviseAsked : SearchAsked
{
    public string? Routine { get; init; }

    public string? Brief { get; init; }

    public int? CountCost { get; init; }

    public int? TechniqueCost { get; init; }

    public int? OrderCost { get; init; }
}

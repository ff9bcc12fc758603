using Generator.Cli.Options;

namespace Generator.Cli.Commands;

/// <summary>What stood on the command line of <c>explain</c>; null where nothing did.</summary>
internal sealed record ExplainAsked : SearchAsked
{
    public string? File { get; init; }

    public string? Move { get; init; }

    public string? Brief { get; init; }
}

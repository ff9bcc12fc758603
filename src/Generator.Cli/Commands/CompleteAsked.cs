using Generator.Cli.Options;

namespace Generator.Cli.Commands;

/// <summary>What stood on the command line of <c>complete</c>; null where nothing did.</summary>
internal sealed record CompleteAsked : SearchAsked
{
    public string? Sketch { get; init; }

    public string? Brief { get; init; }
}

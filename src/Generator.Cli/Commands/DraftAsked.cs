using Generator.Cli.Options;
using Generator.Library.Files;

namespace Generator.Cli.Commands;

/// <summary>What stood on the command line of a draft; null where nothing did.</summary>
internal sealed record DraftAsked : SearchAsked
{
    public string? Brief { get; init; }

    public int? Attackers { get; init; }

    public int? Counts { get; init; }

    public int? Moves { get; init; }

    /// <summary>A scenario that comes with the program.</summary>
    public BundledScenario? Scenario { get; init; }

    public int? Rounds { get; init; }

    public bool Cold { get; init; }

    /// <summary>Something is said that stands instead of a brief.</summary>
    public bool IsQuick => Attackers is not null || Counts is not null || Moves is not null;
}

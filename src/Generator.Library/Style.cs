using Generator.Domain;

namespace Generator.Library;

/// <summary>A word for a whole fight, such as comic: settings of a brief that only cost points, so that none makes a fight impossible. What is null or empty it leaves alone.</summary>
public sealed record Style
{
    public required string Id { get; init; }

    public required string Name { get; init; }

    public IReadOnlyList<string> Aliases { get; init; } = [];

    public Arc? Arc { get; init; }

    /// <summary>As <see cref="Brief.AnsweredPercent"/>.</summary>
    public int? AnsweredPercent { get; init; }

    public HalfCounts? Patience { get; init; }

    public HalfCounts? LongestPause { get; init; }

    public HalfCounts? Linger { get; init; }

    public IReadOnlyList<string> Avoid { get; init; } = [];

    public IReadOnlyList<string> Favour { get; init; } = [];

    /// <summary>Id of the hero's manner.</summary>
    public string? Hero { get; init; }

    /// <summary>Ids of manners, dealt out in turn to attackers who have none.</summary>
    public IReadOnlyList<string> Attackers { get; init; } = [];

    /// <summary>What it looks like, in a sentence.</summary>
    public string Note { get; init; } = string.Empty;
}

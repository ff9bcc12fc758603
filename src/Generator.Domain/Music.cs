namespace Generator.Domain;

/// <summary>What the music of a fight is beside its one tempo.</summary>
public sealed record Music
{
    /// <summary>In order, the first from count 1 on; empty where one tempo lasts throughout.</summary>
    public IReadOnlyList<Passage> Passages { get; init; } = [];

    /// <summary>In order, each at a count of its own.</summary>
    public IReadOnlyList<MusicHold> Holds { get; init; } = [];

    /// <summary>Moments at which a contact should land, in order.</summary>
    public IReadOnlyList<HalfCounts> Accents { get; init; } = [];

    public bool IsEmpty => Passages.Count == 0 && Holds.Count == 0 && Accents.Count == 0;
}

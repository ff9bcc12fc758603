using Generator.Domain;

namespace Generator.Figures.Poses;

/// <summary>How some records look: their start, their contact and their end. Records are named, or follow from what they are.</summary>
public sealed record Shape
{
    public required string Id { get; init; }

    public required RecordKind Of { get; init; }

    /// <summary>Ids without a side.</summary>
    public IReadOnlyList<string> Records { get; init; } = [];

    /// <summary>For records that no shape names; null when only named records look so.</summary>
    public ShapeWhen? When { get; init; }

    /// <summary>The side of a sided record for which the shape is written.</summary>
    public Side Side { get; init; } = Side.Right;

    /// <summary>The attack whose contact it answers, by its id without a side; null for the first that it answers.</summary>
    public string? Against { get; init; }

    /// <summary>The reaction that is drawn; null for the first that the record lists.</summary>
    public string? Reaction { get; init; }

    /// <summary>The other one stays as in the contact, and so do the hands.</summary>
    public bool Keeps { get; init; }

    /// <summary>The start is drawn too.</summary>
    public bool ShowsStart { get; init; }

    /// <summary>Degrees by which both are turned to the left before they are looked at: for what is hidden from the usual side.</summary>
    public double View { get; init; }

    public Instant? Start { get; init; }

    public required Instant Contact { get; init; }

    public Instant? End { get; init; }
}

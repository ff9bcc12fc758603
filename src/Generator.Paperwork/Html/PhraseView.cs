using Generator.Paperwork.Floor;
using Generator.Paperwork.Tracks;

namespace Generator.Paperwork.Html;

/// <summary>A phrase as the pages show it.</summary>
public sealed record PhraseView
{
    public required int Number { get; init; }

    /// <summary>"counts 9 to 17&amp;".</summary>
    public required string Counts { get; init; }

    /// <summary>The move from which it picks up; null for the first.</summary>
    public required MoveView? PickUp { get; init; }

    /// <summary>Its own moves.</summary>
    public required IReadOnlyList<MoveView> Moves { get; init; }

    public required FloorPicture Floor { get; init; }

    /// <summary>The plan in words.</summary>
    public required string FloorWords { get; init; }

    public required IReadOnlyList<TrackLine> Tracks { get; init; }

    /// <summary>First half count, that of the move it picks up from, and the half count up to which it lasts.</summary>
    public required int From { get; init; }

    public required int To { get; init; }
}

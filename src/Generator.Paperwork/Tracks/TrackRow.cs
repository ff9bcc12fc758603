namespace Generator.Paperwork.Tracks;

/// <summary>The track of one performer within a line.</summary>
/// <param name="Performer">Number in the brief, from 0; −1 for the hero.</param>
/// <param name="Name">Shortened to fit.</param>
/// <param name="Boxes">From left to right, without gap or overlap.</param>
/// <param name="Contacts">Where attacks and hits land, in units of the drawing.</param>
public sealed record TrackRow(int Performer, string Name, IReadOnlyList<TrackBox> Boxes, IReadOnlyList<double> Contacts)
{
    /// <summary>Hurt parts that are played.</summary>
    public IReadOnlyList<TrackHurt> Hurts { get; init; } = [];
}

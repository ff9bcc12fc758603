namespace Generator.Paperwork.Tracks;

/// <summary>A line of tracks, as in a score: so many counts for all performers together.</summary>
/// <param name="From">First half count, at the left edge.</param>
/// <param name="To">Half count at the right edge.</param>
/// <param name="Rows">The hero, then the attackers.</param>
/// <param name="Phrases">Numbers of the phrases that begin in it, with where.</param>
public sealed record TrackLine(int From, int To, IReadOnlyList<TrackRow> Rows, IReadOnlyList<(int Number, double X)> Phrases);

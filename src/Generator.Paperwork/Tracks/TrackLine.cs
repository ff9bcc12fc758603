namespace Generator.Paperwork.Tracks;

/// <summary>A line of tracks, as in a score: so many counts for all performers together.</summary>
/// <param name="From">First half count, at the left edge.</param>
/// <param name="To">Half count at the right edge.</param>
/// <param name="Names">Width of the column of names.</param>
/// <param name="Rows">The hero, then the attackers.</param>
/// <param name="Phrases">Phrases that begin in it: where, and what stands over the bar there.</param>
public sealed record TrackLine(int From, int To, double Names, IReadOnlyList<TrackRow> Rows, IReadOnlyList<(string Text, double X)> Phrases);

namespace Generator.Domain;

/// <summary>A count on which everybody stands still. No count of the fight passes meanwhile: the next one comes when it is over.</summary>
/// <param name="At">The count that is held.</param>
/// <param name="Seconds">How long, where the music stands still too; null where it goes on.</param>
/// <param name="Counts">How many counts of the music, where it goes on; null where it stands still.</param>
public sealed record MusicHold(HalfCounts At, decimal? Seconds, int? Counts);

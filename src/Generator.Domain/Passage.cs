namespace Generator.Domain;

/// <summary>A stretch of the music at a tempo of its own; it lasts until the next one begins.</summary>
/// <param name="From">The count with which it begins.</param>
/// <param name="Tempo">How fast it is.</param>
/// <param name="Over">How long the music takes to come to this tempo from the one before; zero is at once.</param>
public sealed record Passage(HalfCounts From, Tempo Tempo, HalfCounts Over);

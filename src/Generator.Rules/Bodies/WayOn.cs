namespace Generator.Rules.Bodies;

/// <summary>A way onto the floor.</summary>
/// <param name="From">The way in at which it begins; null for the floor's edge.</param>
/// <param name="Places">Where it begins, where it turns, and the place to which it leads.</param>
/// <param name="Closed">What stands between every way in and the place, so that nobody can come there; null where the way is free.</param>
public sealed record WayOn(string? From, IReadOnlyList<Place> Places, string? Closed);

namespace Generator.Domain;

/// <summary>Where and when one attacker opens.</summary>
/// <param name="Bearing">Opening bearing.</param>
/// <param name="Distance">Opening distance from the mark.</param>
/// <param name="Entrance">Moment before which the attacker is not yet in play.</param>
public sealed record Placement(Bearing Bearing, Centimetres Distance, HalfCounts Entrance);

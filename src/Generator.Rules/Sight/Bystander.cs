namespace Generator.Rules.Sight;

/// <summary>Somebody who stands on the floor during a hit and may hide it.</summary>
/// <param name="Attacker">Number of the attacker.</param>
/// <param name="Bearing">0 to 23 half hours.</param>
/// <param name="Distance">From the mark, in centimetres.</param>
/// <param name="Height">Stature, in centimetres.</param>
public readonly record struct Bystander(int Attacker, int Bearing, int Distance, int Height);

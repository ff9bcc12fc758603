namespace Generator.Domain;

/// <summary>One attack of a combination.</summary>
/// <param name="Attack">Its id, without side.</param>
/// <param name="Side">Of an attack that has sides; null of one that has none.</param>
public sealed record CombinationPart(string Attack, LeadSide? Side);

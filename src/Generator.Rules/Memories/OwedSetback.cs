using Generator.Domain;

namespace Generator.Rules.Memories;

/// <summary>A setback after which the hero has not scored again.</summary>
/// <param name="Move">Number of the move, from 1.</param>
/// <param name="Time">When it hits, in half counts.</param>
/// <param name="Before">Family of the technique with which the hero scored last before it; null for none.</param>
/// <param name="Felt">Half counts for which it is felt.</param>
public readonly record struct OwedSetback(int Move, int Time, Family? Before, int Felt);

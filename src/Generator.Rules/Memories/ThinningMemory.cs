namespace Generator.Rules.Memories;

/// <summary>What thinning remembers, for each attacker.</summary>
/// <param name="Moves">Moves that they are part of.</param>
/// <param name="Blows">Blows that they have taken.</param>
/// <param name="IsAnybodyOut">Somebody has gone out.</param>
public sealed record ThinningMemory(IReadOnlyList<int> Moves, IReadOnlyList<int> Blows, bool IsAnybodyOut);

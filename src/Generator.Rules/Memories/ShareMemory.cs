namespace Generator.Rules.Memories;

/// <summary>What share remembers.</summary>
/// <param name="Exchanges">Exchanges with each attacker so far.</param>
public sealed record ShareMemory(IReadOnlyList<int> Exchanges);

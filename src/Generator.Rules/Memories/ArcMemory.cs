namespace Generator.Rules.Memories;

/// <summary>What arc remembers.</summary>
/// <param name="Shape">The shape asked for; null when there is none to judge.</param>
/// <param name="Heaviest">Greatest weight of each phase so far, 0 where there was no move.</param>
public sealed record ArcMemory(ArcShape? Shape, IReadOnlyList<int> Heaviest);

namespace Generator.Rules.Memories;

/// <summary>What moments remembers.</summary>
/// <param name="Progress">One for each hero moment of the brief, in its order.</param>
public sealed record MomentsMemory(IReadOnlyList<MomentProgress> Progress);

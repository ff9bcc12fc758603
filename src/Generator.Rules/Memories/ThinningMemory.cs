namespace Generator.Rules.Memories;

/// <summary>What thinning remembers.</summary>
/// <param name="Parts">Of each attacker.</param>
/// <param name="IsAnybodyOut">Somebody has gone out.</param>
public sealed record ThinningMemory(IReadOnlyList<PartSoFar> Parts, bool IsAnybodyOut)
{
    /// <summary>Before the first move.</summary>
    /// <param name="cast">Number of attackers.</param>
    public static ThinningMemory Fresh(int cast) => new([.. Enumerable.Repeat(PartSoFar.Fresh, cast)], false);
}

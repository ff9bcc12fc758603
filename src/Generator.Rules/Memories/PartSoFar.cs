namespace Generator.Rules.Memories;

/// <summary>What an attacker has had to do so far.</summary>
/// <param name="Moves">Moves that they are part of.</param>
/// <param name="Blows">Blows that they have taken.</param>
/// <param name="HitAt">End of the last blow since they last attacked, in half counts; −1 for none.</param>
/// <param name="IsBeaten">Something since they last attacked put them down, folded them or snapped their head back: a blow, a throw, a hold.</param>
public readonly record struct PartSoFar(int Moves, int Blows, int HitAt, bool IsBeaten)
{
    /// <summary>Before the first move.</summary>
    public static PartSoFar Fresh => new(0, 0, -1, false);
}

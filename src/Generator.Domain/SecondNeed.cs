namespace Generator.Domain;

/// <summary>Where and how a technique for two must find the second attacker, who shares the reaction.</summary>
/// <param name="FewestApart">Half hours between the bearings of the two, at least; nearer than that they would stand in one another's way.</param>
/// <param name="MostApart">At most.</param>
/// <param name="Nearest">From the mark.</param>
/// <param name="Farthest">From the mark.</param>
/// <param name="Needs">Postures in which it finds them.</param>
public sealed record SecondNeed(int FewestApart, int MostApart, Centimetres Nearest, Centimetres Farthest, PostureSet Needs)
{
    /// <summary>The second may be here.</summary>
    /// <param name="apart">Half hours from the target's bearing.</param>
    /// <param name="distance">Centimetres from the mark.</param>
    public bool IsThere(int apart, int distance) => apart >= FewestApart && apart <= MostApart && distance >= Nearest.Value && distance <= Farthest.Value;

    /// <summary>Half hours and centimetres by which they are away from there; both 0 where they are.</summary>
    /// <param name="apart">Half hours from the target's bearing.</param>
    /// <param name="distance">Centimetres from the mark.</param>
    public (int HalfHours, int Centimetres) Off(int apart, int distance) =>
        (Math.Max(0, Math.Max(FewestApart - apart, apart - MostApart)), Math.Max(0, Math.Max(Nearest.Value - distance, distance - Farthest.Value)));
}

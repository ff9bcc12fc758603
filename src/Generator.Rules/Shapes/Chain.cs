using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Rules.Shapes;

/// <summary>
/// Blows one after the other in one exchange, and whether each goes on with what the one before has freed: another limb, and the way that the body turns
/// already. Common practice, no source.
/// </summary>
/// <param name="Links">Neighbours in one exchange that are both hits of the hero.</param>
/// <param name="SameLimb">Of these the second (number from 1) where it is thrown with the limb that has just hit.</param>
/// <param name="Neighbours">Neighbours in one exchange, whatever they are.</param>
/// <param name="Against">Of these the second where the hero turns at least 30° to or in one move and at least 30° back for the next.</param>
public sealed record Chain(int Links, IReadOnlyList<int> SameLimb, int Neighbours, IReadOnlyList<int> Against)
{
    /// <summary>Half hours from which a turn is one that must be wound up.</summary>
    private const int Wound = 2;

    private const BodyParts Limbs = BodyParts.LeftArm | BodyParts.RightArm | BodyParts.LeftLeg | BodyParts.RightLeg;

    public static Chain Of(IReadOnlyList<Step> steps)
    {
        var neighbours = steps.Zip(steps.Skip(1)).Where(p => !p.Second.Opens && p.First.HasTarget && p.Second.HasTarget).ToList();
        var links = neighbours.Where(p => p.First.Throws && p.Second.Throws).ToList();
        return new Chain(
            links.Count,
            [.. links.Where(p => (LimbOf(p.First) & LimbOf(p.Second)) != BodyParts.None).Select(p => p.Second.Index + 1)],
            neighbours.Count,
            [.. neighbours.Where(p => IsAgainst(TurnOf(p.First), TurnOf(p.Second))).Select(p => p.Second.Index + 1)]);
    }

    private static int TurnOf(Step step) => step.TurnMade + (step.Technique?.Turn.HalfHours ?? 0);

    private static BodyParts LimbOf(Step step)
    {
        var limbs = step.Technique!.Load.Work & Limbs;
        return step.Technique.Side switch
        {
            Side.Left => limbs & (BodyParts.LeftArm | BodyParts.LeftLeg),
            Side.Right => limbs & (BodyParts.RightArm | BodyParts.RightLeg),
            _ => limbs,
        };
    }

    private static bool IsAgainst(int last, int next) => Math.Abs(last) >= Wound && Math.Abs(next) >= Wound && Math.Sign(last) != Math.Sign(next);
}

using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Rules.Shapes;

/// <summary>
/// Blows one after the other in one exchange, and whether each goes on with what the one before has freed: another limb, and the way that the body turns
/// already. Common practice, no source.
/// </summary>
/// <param name="Links">Neighbours in one exchange that are both hits of the hero.</param>
/// <param name="SameLimb">Of these the second (number from 1) where it is thrown with the limb that has just hit.</param>
/// <param name="TooAlike">Of these those by which more than one in four of all links so far are so.</param>
/// <param name="Neighbours">Neighbours in one exchange, whatever they are.</param>
/// <param name="Against">Of these the second where the hero turns at least 30° to or in one move and at least 30° back for the next.</param>
/// <param name="TooMuch">Of these those by which more than one in ten of all neighbours so far are so.</param>
public sealed record Chain(int Links, IReadOnlyList<int> SameLimb, IReadOnlyList<int> TooAlike, int Neighbours, IReadOnlyList<int> Against, IReadOnlyList<int> TooMuch)
{
    /// <summary>Of a hundred links those that may go on with the same limb.</summary>
    public const int MostAlike = 25;

    /// <summary>Of a hundred neighbours those that may be wound up.</summary>
    public const int MostAgainst = 10;

    /// <summary>Half hours from which a turn is one that must be wound up.</summary>
    public const int Wound = 2;

    private static readonly BodyParts[] Limbs = [BodyParts.LeftArm, BodyParts.RightArm, BodyParts.LeftLeg, BodyParts.RightLeg];

    public static Chain Of(IReadOnlyList<Step> steps)
    {
        var neighbours = steps.Zip(steps.Skip(1)).Where(p => !p.Second.Opens && p.First.HasTarget && p.Second.HasTarget).ToList();
        var links = neighbours.Where(p => p.First.Throws && p.Second.Throws).ToList();
        var (alike, against) = (links.Select(p => (LimbOf(p.First) & LimbOf(p.Second)) != BodyParts.None).ToList(), neighbours.Select(p => WayOf(p.First) * WayOf(p.Second) < 0).ToList());
        return new Chain(
            links.Count,
            Numbers(links, alike),
            Numbers(links, [.. alike.Select((isSo, i) => isSo && Exceeds(alike.Take(i + 1).Count(so => so), i + 1, MostAlike))]),
            neighbours.Count,
            Numbers(neighbours, against),
            Numbers(neighbours, [.. against.Select((isSo, i) => isSo && Exceeds(against.Take(i + 1).Count(so => so), i + 1, MostAgainst))]));
    }

    internal static bool Exceeds(int part, int whole, int most) => 100 * part > most * whole;

    /// <summary>The limb that hits, on the side of the technique where it has one; none where the move is no hit.</summary>
    internal static BodyParts LimbOf(Step step)
    {
        if (step is not { Throws: true, Technique: { } technique })
        {
            return BodyParts.None;
        }

        var works = technique.Load.Work & technique.Side switch
        {
            Side.Left => BodyParts.LeftArm | BodyParts.LeftLeg,
            Side.Right => BodyParts.RightArm | BodyParts.RightLeg,
            _ => BodyParts.All,
        };
        var limbs = BodyParts.None;
        foreach (var limb in Limbs)
        {
            limbs |= (works & limb) != BodyParts.None ? limb : BodyParts.None;
        }

        return limbs;
    }

    /// <summary>The way that the hero turns, in the gap and in the technique together: 1 clockwise, −1 the other way, 0 where it is less than 30°.</summary>
    internal static int WayOf(Step step)
    {
        var turn = step.TurnMade + (step.Technique?.Turn.HalfHours ?? 0);
        return Math.Abs(turn) < Wound ? 0 : Math.Sign(turn);
    }

    private static int[] Numbers(List<(Step First, Step Second)> pairs, List<bool> which) =>
        [.. pairs.Where((_, i) => which[i]).Select(p => p.Second.Index + 1)];
}

using Generator.Domain;
using Generator.Figures.Bodies;
using Generator.Figures.Poses;

namespace Generator.Figures.Posing;

/// <summary>Puts the second attacker of a technique for two into its pictures: as far round as in the fight, and no nearer or farther than the record allows. What happens to the first happens to the second.</summary>
internal sealed class SecondPartner
{
    private readonly PoseBook poses;
    private readonly double stature;
    private readonly SecondNeed need;
    private readonly Posture posture;

    public SecondPartner(PoseBook poses, double stature, SecondNeed need, Met met)
    {
        (this.poses, this.stature, this.need) = (poses, stature, need);
        At = met.SecondAt ?? (int)((need.FewestApart + need.MostApart) * Bearing.DegreesPerHalfHour / 2);
        posture = met.SecondPosture is { } found && need.Needs.Contains(found) ? found : need.Needs.Contains(Posture.Ready) ? Posture.Ready : need.Needs.Members.First();
    }

    /// <summary>Degrees to the hero's left of the first; below 0 to the right.</summary>
    public int At { get; }

    /// <summary>The frame with both of them.</summary>
    /// <param name="frame">The first one and the hero.</param>
    /// <param name="space">Between hero and first at the contact; metres.</param>
    /// <param name="instant">What the hero aims; null for nothing.</param>
    /// <param name="asFirst">The second holds themselves as the first does; else in the posture in which they are found.</param>
    public Frame Into(Frame frame, double space, Instant? instant, bool asFirst)
    {
        if (frame.Attacker is not { } first || frame.Hero is not { } hero)
        {
            return frame;
        }

        var own = Math.Clamp(space, need.Nearest.Value / 100.0, need.Farthest.Value / 100.0);
        var stands = asFirst ? first.Moved(Vec.Ahead * (own - space)) : Kinematics.Of(poses.Poses[poses.Postures[posture]], stature).TurnedLeft(180).Moved(Vec.Ahead * own);
        var second = stands.TurnedLeft(At);
        if (instant is not { SecondAims: { Count: > 0 } aims })
        {
            return frame with { Second = second };
        }

        (hero, _) = Aiming.Limbs(hero, second, aims);
        return frame with { Hero = hero, Second = second, Marks = [.. frame.Marks, .. Aiming.Marks(hero, second, aims)] };
    }
}

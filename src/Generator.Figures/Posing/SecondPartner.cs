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

        var (nearest, own) = (need.Nearest.Value / 100.0, Math.Clamp(space, need.Nearest.Value / 100.0, need.Farthest.Value / 100.0));
        var stands = asFirst ? first.Moved(Vec.Ahead * (own - space)) : Kinematics.Of(poses.Poses[poses.Postures[posture]], stature).TurnedLeft(180).Moved(Vec.Ahead * own);
        var second = stands.TurnedLeft(At);
        if (instant is not { SecondAims: { Count: > 0 } aims })
        {
            return frame with { Second = second };
        }

        // Who has gone in to the first is farther from the second, who comes in by as much as the record lets them, or nearer, and then they give ground.
        (var reached, var missing) = Aiming.Limbs(hero, second, aims);
        for (var tries = 0; tries < 3 && missing > Clearing.Near && own > nearest; tries++)
        {
            var comes = Math.Min(missing, own - nearest);
            own -= comes;
            second = second.Moved((second[Joint.Hips] - hero[Joint.Hips]).Level.Unit * -comes);
            (reached, missing) = Aiming.Limbs(hero, second, aims);
        }

        if (Clearing.Depth(reached, second) is var depth and > Clearing.Gives)
        {
            second = second.Moved((second[Joint.Hips] - hero[Joint.Hips]).Level.Unit * Math.Min(depth, Math.Max(0, (need.Farthest.Value / 100.0) - own)));
            (reached, _) = Aiming.Limbs(hero, second, aims);
        }

        var best = (Hero: reached, Wrong: Wrong(reached));
        foreach (var bent in best.Wrong > 0 ? Leaning.Ways(hero, (second[Joint.Hips] - hero[Joint.Hips]).Level.Unit) : [])
        {
            var both = Aiming.Limbs(Aiming.Limbs(bent, first, instant.Aims).Figure, second, aims).Figure;
            best = Wrong(both) is var wrong && wrong < best.Wrong && best.Wrong > 0 ? (both, wrong) : best;
        }

        return frame with
        {
            Hero = best.Hero,
            Second = second,
            Marks = [.. Aiming.Marks(best.Hero, first, instant.Aims), .. Aiming.Marks(first, best.Hero, instant.OtherAims), .. Aiming.Marks(best.Hero, second, aims)],
            Gap = frame.Gap is null ? null : Aiming.Gap(best.Hero, first, instant.Aims),
        };

        double Wrong(Figure body) => Math.Max(Clearing.Wrong(body, first, instant.Aims), Clearing.Wrong(body, second, aims));
    }
}

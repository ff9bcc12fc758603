using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Rules.Bodies;

/// <summary>
/// Whom the hero comes too near on the way from mark to mark, and who comes onto the floor through the mark of the moment. The partner of a travel move, and whoever goes along, is left to the technique.
/// </summary>
public static class WithTheHero
{
    /// <summary>Somebody who comes onto the floor would come too near to the hero, on whatever mark the hero was by then.</summary>
    /// <param name="scene">The floor.</param>
    /// <param name="hero">The hero's way so far.</param>
    /// <param name="way">That of who comes.</param>
    public static bool MeetsOnTheWay(Scene scene, Leg hero, Leg way) => way.Chain().Where(l => l.Kind == LegKind.Enters)
        .Any(other => hero.Chain().Any(own => FloorGeometry.Whole(own.Apart(other)) < Meeting.Wanted(scene.Settle, own.Kind, other.Kind)));

    /// <summary>Adds those of a step to a list; true where there is no list and there are some.</summary>
    internal static bool Meetings(Scene scene, Step step, List<Meeting>? found)
    {
        for (var a = 0; a < scene.Cast; a++)
        {
            if (Nearest(scene, step, a) is { } meeting)
            {
                if (found is null)
                {
                    return true;
                }

                found.Add(meeting);
            }
        }

        return false;
    }

    private static Meeting? Nearest(Scene scene, Step step, int attacker)
    {
        var nearest = default(Meeting?);
        for (var own = step.After.HeroWay; own is not null; own = own.Before)
        {
            for (var other = step.After.Attackers[attacker].Way; other is not null && other.Reaches(own.From); other = other.Before)
            {
                if (!IsLookedAt(step, attacker, own, other))
                {
                    continue;
                }

                var wanted = Meeting.Wanted(scene.Settle, own.Kind, other.Kind);
                var (since, until) = other.Kind == LegKind.Enters ? ((double)step.Before.Time, (double)step.After.Time) : (double.NegativeInfinity, double.PositiveInfinity);
                if (!own.IsClearOf(other, wanted) && FloorGeometry.Whole(own.Apart(other, since, until)) is var apart && apart < wanted
                    && (nearest is not { } known || wanted - apart > known.Room - known.Apart))
                {
                    nearest = new Meeting(-1, attacker, own, other, apart, wanted);
                }
            }
        }

        return nearest;
    }

    /// <summary>
    /// One of the two is new; who comes in is looked at move by move wherever the hero is, everybody else only where the hero is on the way: how near somebody may come to who stays on the mark is
    /// a matter of the techniques.
    /// </summary>
    private static bool IsLookedAt(Step step, int attacker, Leg own, Leg other)
    {
        if (other.Kind == LegKind.Enters)
        {
            return own.To > step.Before.Time;
        }

        return own.Start != own.End && own.Move != other.Move && (own.Move == step.Index ? !step.Concerns(attacker) && !step.After.Attackers[attacker].Posture.IsTied() : other.Move == step.Index);
    }
}

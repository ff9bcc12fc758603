using Generator.Domain;
using Generator.Rules.Bodies;

namespace Generator.Rules.Replaying;

/// <summary>What a travel move does beside what every move does: the hero comes to another mark, some go along, and everybody is seen from there.</summary>
internal static class Travelling
{
    /// <summary>Whoever goes along keeps bearing and distance, seen from the new mark: the partner of a move that takes them along, and whoever holds the hero or is held.</summary>
    public static void GoAlong(Step step, AttackerState[] attackers, int target)
    {
        if (step.Travels < 0)
        {
            return;
        }

        var mark = step.Scene.Marks[step.Travels];
        for (var a = 0; a < attackers.Length; a++)
        {
            if (a == target ? step.Technique!.Travel!.Follows : attackers[a].Posture.IsTied())
            {
                attackers[a] = attackers[a] with { Origin = mark };
            }
        }
    }

    /// <summary>Everybody else is where they are, and is seen from the new mark.</summary>
    public static void Look(Step step, AttackerState[] attackers)
    {
        if (step.Travels < 0)
        {
            return;
        }

        var mark = step.Scene.Marks[step.Travels];
        for (var a = 0; a < attackers.Length; a++)
        {
            if (attackers[a].Origin != mark)
            {
                attackers[a] = attackers[a].SeenFrom(mark);
            }
        }
    }

    /// <summary>The hero's way with the legs of the move on top.</summary>
    public static Leg Way(Step step)
    {
        var (from, to) = (step.Mark, step.Scene.Marks[step.Travels]);
        var last = step.Before.HeroWay ?? Leg.Always(from);
        var stood = new Leg(LegKind.Rests, last.Move, last.From, Math.Max(last.From, step.SetsOff), from, from, last.Before);
        var goes = new Leg(LegKind.Comes, step.Index, stood.To, Math.Max(stood.To, step.End), from, to, stood);
        return new Leg(LegKind.Rests, step.Index, goes.To, double.PositiveInfinity, to, to, goes);
    }
}

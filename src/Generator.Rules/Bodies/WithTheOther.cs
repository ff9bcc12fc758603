using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Rules.Bodies;

/// <summary>
/// Whom a move of the hero brings too near to the ally, or one of the ally's to the hero: attackers on the ways that it gives them, and whoever makes it on the step off the mark or going down. Each of the
/// two is on their mark, and off it as far as their last move steps while that lasts.
/// </summary>
public static class WithTheOther
{
    /// <summary>Hero and ally on their marks, and attackers who open beside the ally or come onto the floor past them. How near anybody opens to the hero is a matter of the brief.</summary>
    internal static IEnumerable<Meeting> AtTheOpening(Scene scene, FightState open)
    {
        var (own, other) = (Leg.Always(scene.Marks[open.Mark]), Leg.Always(scene.Marks[open.Other!.Mark]));
        if (Near(-1, Words.Other, own, other, scene.Settle.Spacing.Value) is { } marks)
        {
            yield return marks;
        }

        for (var a = 0; a < scene.Cast; a++)
        {
            var legs = open.Attackers[a].Way.Chain().Select(leg => Near(a, Words.Other, leg, other, leg.Kind == LegKind.Enters ? scene.Settle.LaneBeside.Value : scene.Settle.Spacing.Value)).OfType<Meeting>().ToList();
            if (legs.Count > 0)
            {
                yield return legs.MinBy(m => m.Apart - m.Room);
            }
        }
    }

    /// <summary>Adds those of a step to a list; true where there is no list and there are some.</summary>
    internal static bool Meetings(Scene scene, Step step, List<Meeting>? found)
    {
        List<Meeting> all = [.. Own(scene, step)];
        for (var a = 0; a < scene.Cast; a++)
        {
            all.AddRange(OfAttacker(scene, step, a));
        }

        found?.AddRange(all);
        return found is null && all.Count > 0;
    }

    /// <summary>Whoever makes the move, stepping off the mark and going down: nobody knows which way they fall, so it is taken to be towards the other.</summary>
    private static IEnumerable<Meeting> Own(Scene scene, Step step)
    {
        var (mark, other) = (step.Mark, step.Before.Other!);
        var there = scene.Marks[other.Mark];
        if (step.StepsTo != default)
        {
            var steps = new Leg(LegKind.Lies, step.Index, step.Start, step.End, mark, mark + step.StepsTo, null);
            foreach (var meeting in Bodies(scene, other).Select(b => Near(Words.Other, -1, b, steps, scene.Settle.LaneBeside.Value)).OfType<Meeting>().OrderBy(m => m.Apart).Take(1).Select(m => (Meeting?)m).Concat(Enumerable.Range(0, scene.Cast).Select(a => UnderWay(scene, step, a, steps))).OfType<Meeting>())
            {
                yield return meeting;
            }
        }

        if (step.Technique is { HeroFall: not (FallClass.None or FallClass.ToKnee) } || (Lies(step.After.Stance) && !Lies(step.Before.Stance)))
        {
            var axis = scene.Brief.Hero.Height.Value - (2 * scene.Settle.BodyRadius.Value);
            var falls = new Leg(LegKind.Lies, step.Index, step.Start, double.PositiveInfinity, mark, mark.Towards(there, axis / mark.To(there)), null);
            if (Near(-1, Words.Other, falls, Leg.Always(there), 2 * scene.Settle.BodyRadius.Value) is { } under)
            {
                yield return under;
            }
        }
    }

    private static bool Lies(Stance stance) => stance is Stance.FloorBack or Stance.FloorFront;

    /// <summary>An attacker whom the other's last move on them still takes somewhere, past the step off the mark.</summary>
    private static Meeting? UnderWay(Scene scene, Step step, int attacker, Leg steps)
    {
        var state = step.Before.Attackers[attacker];
        return state.HasNotActed || state.BusyWithAlly == step.IsByAlly || step.Concerns(attacker) ? null : state.Way.Chain()
            .Where(l => l.Move == state.Leg!.Move && l.Start != l.End && !l.Lies)
            .Select(l => Near(attacker, -1, l, steps, Meeting.Wanted(scene.Settle, l.Kind, LegKind.Rests))).OfType<Meeting>().FirstOrDefault() is { Room: > 0 } near ? near : null;
    }

    private static Dictionary<(bool IsUnderfoot, bool IsInALane), Meeting>.ValueCollection OfAttacker(Scene scene, Step step, int attacker)
    {
        var stood = step.Before.Attackers[attacker].Place;
        var nearest = new Dictionary<(bool IsUnderfoot, bool IsInALane), Meeting>();
        foreach (var leg in step.LegsOf(attacker).Where(l => l.Kind != LegKind.Enters))
        {
            foreach (var body in Bodies(scene, step.Before.Other!))
            {
                // Whoever stood nearer before only comes no nearer: where they stood has been judged.
                var room = Meeting.Wanted(scene.Settle, leg.Kind, LegKind.Rests);
                var had = leg.Lies || leg.From < body.From ? room : leg.Start == leg.End ? (leg.Start.To(stood) < 0.5 ? 0 : room) : FloorGeometry.Whole(leg.Start.ToLine(body.Start, body.End));
                if (Near(attacker, Words.Other, leg, body, Math.Min(room, had)) is { } near && (!nearest.TryGetValue((near.IsUnderfoot, near.IsInALane), out var known) || near.Room - near.Apart > known.Room - known.Apart))
                {
                    nearest[(near.IsUnderfoot, near.IsInALane)] = near;
                }
            }
        }

        return nearest.Values;
    }

    /// <summary>Where the other of hero and ally is: on the mark, and on the step off it while their last move lasts.</summary>
    private static IEnumerable<Leg> Bodies(Scene scene, FightState other)
    {
        var mark = scene.Marks[other.Mark];
        yield return Leg.Always(mark);
        if (other.Steps != default)
        {
            // Anywhere on it at any moment of the move.
            yield return new Leg(LegKind.Lies, -1, other.LastStart, other.Time, mark, mark + other.Steps, null);
        }
    }

    /// <summary>The two, where they come nearer to one another than the room that they need. A step off the mark is at every moment anywhere on it, as a body that lies is.</summary>
    private static Meeting? Near(int first, int second, Leg mine, Leg body, int room)
    {
        var apart = FloorGeometry.Whole(mine.Apart(body));
        return apart < room ? new Meeting(first, second, first < 0 ? Upright(mine) : mine, Upright(body), apart, room) : null;
    }

    private static Leg Upright(Leg leg) => leg.Lies && !double.IsInfinity(leg.To) ? new Leg(LegKind.Comes, leg.Move, leg.From, leg.To, leg.Start, leg.End, null) : leg;
}

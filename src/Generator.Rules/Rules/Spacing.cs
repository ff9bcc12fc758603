using Generator.Domain;
using Generator.Rules.Bodies;
using Generator.Rules.Memories;
using Generator.Rules.Replaying;

namespace Generator.Rules.Rules;

/// <summary>
/// Everybody upright keeps room from everybody else upright, at rest and on the way in, and stands on the floor. What it has told of two people is remembered until one of them moves
/// (<see cref="SpacingBits"/>).
/// </summary>
public sealed class Spacing : Rule
{
    public override string Id => "spacing";

    public override string Title => "Everybody upright keeps room from everybody else upright: 1 m where both stand ready.";

    public override Severity Worst => Severity.Unsafe;

    public override Whose Looks => Whose.Both;

    public override object? Begin(Scene scene, FightState open, Tally tally)
    {
        var told = 0UL;
        for (var a = 0; a < scene.Cast; a++)
        {
            var one = open.Attackers[a];
            if (one.Distance > scene.Floor[one.Bearing] && tally.Count(Severity.Unsafe))
            {
                tally.Tell(OffTheFloor(scene, scene.Floor, AtEnd(open, Severity.Unsafe, Words.Name(scene, a), string.Empty), a, one.Bearing, one.Distance, "opens"));
            }

            if (one.Entrance > 0 && scene.Entries.To(one.Bearing, one.Distance).Closed is { } closed && tally.Count(Severity.Unsafe))
            {
                tally.Tell(NoWayOn(scene, AtEnd(open, Severity.Unsafe, Words.Name(scene, a), string.Empty), a, one, closed));
            }

            for (var b = a + 1; b < scene.Cast; b++)
            {
                var apart = one.Apart(open.Attackers[b]);
                if (apart >= scene.Settle.Spacing.Value)
                {
                    continue;
                }

                told |= SpacingBits.Bit(a, b);
                if (tally.Count(Severity.Unsafe))
                {
                    tally.Tell(TooClose(scene, AtEnd(open, Severity.Unsafe, string.Empty, string.Empty), a, b, apart, "open", scene.Settle.Spacing.Value));
                }
            }
        }

        if (open.Other is not null)
        {
            foreach (var meeting in WithTheOther.AtTheOpening(scene, open).Where(_ => tally.Count(Severity.Unsafe)))
            {
                tally.Tell(TooClose(scene, AtEnd(open, Severity.Unsafe, string.Empty, string.Empty), meeting.First, meeting.Second, meeting.Apart, meeting.Mine.Kind == LegKind.Enters ? "pass" : "open", meeting.Room));
            }
        }

        return told == 0 ? null : told;
    }

    public override object? Observe(Scene scene, object? memory, Step step, Tally tally)
    {
        foreach (var meeting in step.Meetings(scene))
        {
            if (meeting.IsOfSpacing && tally.Count(Severity.Unsafe))
            {
                tally.Tell(TooClose(scene, At(scene, step, Severity.Unsafe, string.Empty), meeting.First, meeting.Second, meeting.Apart, HowNear(meeting), meeting.Room));
            }
        }

        if (step.HasTarget && step.Attack is not null)
        {
            ComesIn(scene, step, tally);
        }

        return AtRest(scene, memory, step, tally);
    }

    /// <summary>The way round the clock, and the metre from those who stand ready where the attack is thrown from.</summary>
    private void ComesIn(Scene scene, Step step, Tally tally)
    {
        var opener = step.Row.Attacker;
        var stood = step.Before.Attackers[opener];
        var way = new Bearing(stood.Bearing).To(new Bearing(step.TargetBearing)).HalfHours;
        for (var i = 1; i <= Math.Abs(way); i++)
        {
            var bearing = new Bearing(stood.Bearing + (Math.Sign(way) * i)).HalfHours;
            if (stood.Distance > step.Floor[bearing])
            {
                if (tally.Count(Severity.Unsafe))
                {
                    tally.Tell(OffTheFloor(scene, step.Floor, At(scene, step, Severity.Unsafe, string.Empty), opener, bearing, stood.Distance, "comes"));
                }

                break;
            }
        }

        if (step.Distance > step.Floor[step.TargetBearing] && stood.Distance <= step.Floor[step.TargetBearing] && tally.Count(Severity.Unsafe))
        {
            tally.Tell(OffTheFloor(scene, step.Floor, At(scene, step, Severity.Unsafe, string.Empty), opener, step.TargetBearing, step.Distance, "strikes"));
        }

        if (stood.Stays is not null && step.Before.HeroWay is not null && Closed(scene, step, opener) is { } thing && tally.Count(Severity.Unsafe))
        {
            tally.Tell(At(scene, step, Severity.Unsafe, $"{Words.Name(scene, opener)} comes through {thing}, which stands between their place and {scene.Brief.Hero.Name}.") with
            {
                Who = Words.Name(scene, opener),
                Advice = "Let them come from another bearing, or leave the mark another way.",
            });
        }

        for (var a = 0; a < scene.Cast; a++)
        {
            var other = step.Before.Attackers[a];
            if (a == opener || !other.StandsReadyAt(step.Contact))
            {
                continue;
            }

            var apart = other.Apart(step.TargetBearing, step.Distance);
            if (apart < scene.Settle.Spacing.Value && (apart >= scene.Settle.LaneBeside.Value || a == step.Second) && tally.Count(Severity.Unsafe))
            {
                tally.Tell(TooClose(scene, At(scene, step, Severity.Unsafe, string.Empty), opener, a, apart, "stand", scene.Settle.Spacing.Value));
            }
        }
    }

    /// <summary>Those whom the move leaves alone: who stands ready beside whom, and who is left standing at the hero's elbow.</summary>
    private object? AtRest(Scene scene, object? memory, Step step, Tally tally)
    {
        var was = SpacingBits.Known(memory);
        var told = was;
        for (var a = 0; a < scene.Cast; a++)
        {
            var one = step.Before.Attackers[a];
            if (step.Concerns(a))
            {
                told &= ~SpacingBits.Of(a);
                continue;
            }

            if ((told & SpacingBits.With(step, a)) == 0 && !one.LiesAt(step.Start) && AtTheHero(scene, step, a) is { } near)
            {
                told |= SpacingBits.With(step, a);
                if (tally.Count(Severity.Unsafe))
                {
                    tally.Tell(TooClose(scene, At(scene, step, Severity.Unsafe, string.Empty), a, -1, near, "stand", 2 * scene.Settle.BodyRadius.Value));
                }
            }

            for (var b = a + 1; b < scene.Cast && one.StandsReadyAt(step.Start); b++)
            {
                var other = step.Before.Attackers[b];
                if (step.Concerns(b) || !other.StandsReadyAt(step.Start) || (told & SpacingBits.Bit(a, b)) != 0 || one.Apart(other) is var apart && apart >= scene.Settle.Spacing.Value)
                {
                    continue;
                }

                told |= SpacingBits.Bit(a, b);
                if (tally.Count(Severity.Unsafe))
                {
                    tally.Tell(TooClose(scene, At(scene, step, Severity.Unsafe, string.Empty), a, b, apart, "stand", scene.Settle.Spacing.Value));
                }
            }
        }

        return told == was ? memory : told;
    }

    /// <summary>
    /// Told before the step is worked out: whom the move leaves alone stand too near to one another, or to the hero, when it starts, so that <see cref="Observe"/> would tell of it. A move that may concern
    /// a second one is not looked at.
    /// </summary>
    internal static bool Refuses(Scene scene, object? memory, FightState before, in Row row)
    {
        var technique = row.Technique < 0 ? null : scene.Book.Techniques[row.Technique];
        if (technique is null or { TakesTwo: true } || row.Reaction < 0 || scene.Book.Reactions[row.Reaction].HitsSecond)
        {
            return false;
        }

        var (told, target, attackers) = (SpacingBits.Known(memory), technique.HasNoTarget ? -1 : row.Attacker, before.Attackers);
        for (var a = 0; a < scene.Cast; a++)
        {
            var one = attackers[a];
            if (a == target)
            {
                continue;
            }

            if (StandsAtTheHero(scene, one, row.Start) && (told & SpacingBits.Bit(a, a)) == 0)
            {
                return true;
            }

            for (var b = a + 1; b < scene.Cast && one.StandsReadyAt(row.Start); b++)
            {
                var other = attackers[b];
                if (b != target && other.StandsReadyAt(row.Start) && (told & SpacingBits.Bit(a, b)) == 0 && one.Apart(other) < scene.Settle.Spacing.Value)
                {
                    return true;
                }
            }
        }

        return false;
    }

    /// <summary>Upright at the mark itself, wherever the hero steps from there.</summary>
    private static bool StandsAtTheHero(Scene scene, AttackerState other, int moment) =>
        other.Distance < 2 * scene.Settle.BodyRadius.Value && IsBeside(other, moment) && !other.LiesAt(moment);

    /// <summary>On the floor, and neither held by the hero nor holding them.</summary>
    private static bool IsBeside(AttackerState other, int moment, bool withOther = false) =>
        other.Entrance <= moment && !other.Gone && (withOther || (!other.Posture.IsControlled() && other.Posture != Posture.Gripping));

    /// <summary>
    /// How near the hero, on the mark and on the step off it, comes to somebody on the floor whom they neither work on nor hold nor are held by: to the middle, or the whole body, in centimetres. Null
    /// for who is clear of the hero's own room.
    /// </summary>
    internal static int? AtTheHero(Scene scene, Step step, int attacker)
    {
        var other = step.Before.Attackers[attacker];
        if (!IsBeside(other, step.Start, step.Before.IsWithOther(attacker)))
        {
            return null;
        }

        var (room, steps, lies) = (2 * scene.Settle.BodyRadius.Value, step.StepsTo, other.Leg?.LyingAt(step.Start));
        if (lies is null && other.Distance >= room && steps == default)
        {
            return null;
        }

        var (mark, there) = (step.Mark, step.Mark + steps);
        var near = FloorGeometry.Whole(lies is null ? other.Place.ToLine(mark, there) : Place.Between(mark, there, lies.Start, lies.End));
        return near < room ? near : null;
    }

    private static string HowNear(Meeting meeting) => (meeting.Mine.Kind, meeting.Other.Kind) switch
    {
        (LegKind.Comes or LegKind.Enters or LegKind.Led, LegKind.Rests) => "pass",
        (LegKind.Rests, LegKind.Rests) => "stand",
        _ => "meet",
    };

    /// <summary>What stands on the way in of somebody who comes from off the bearings of the mark.</summary>
    private static string? Closed(Scene scene, Step step, int attacker)
    {
        foreach (var leg in step.LegsOf(attacker))
        {
            if (leg.Kind == LegKind.Comes && (scene.Floor.Between(leg.Start, leg.End) ?? scene.Floor.On(leg.End)) is { } thing)
            {
                return thing;
            }
        }

        return null;
    }

    private static Finding OffTheFloor(Scene scene, FloorReach floor, Finding finding, int attacker, int bearing, int distance, string verb)
    {
        var edge = floor[bearing];
        return finding with
        {
            Message = $"{Words.Name(scene, attacker)} {verb} {Words.Metres(distance)} out at {new Bearing(bearing).InWords}; {Words.FloorEnds(floor, bearing)} there.",
            Measured = distance / 100m,
            Allowed = edge / 100m,
            Unit = "m",
            Advice = "Start nearer to the mark, or from a deeper side of the floor.",
        };
    }

    private static Finding NoWayOn(Scene scene, Finding finding, int attacker, AttackerState stands, string closed) => finding with
    {
        Message = $"{Words.Name(scene, attacker)} cannot enter to {new Bearing(stands.Bearing).InWords}, {Words.Metres(stands.Distance)} out: {closed} stands between the way in and that place, and there is no way round.",
        Advice = "Give a way in on that side of the floor, or another opening place.",
    };

    private static Finding TooClose(Scene scene, Finding finding, int first, int second, int apart, string verb, int wanted)
    {
        var (one, other) = (Words.Name(scene, first), Words.Name(scene, second));
        return finding with
        {
            Who = $"{one}, {other}",
            Message = $"{one} and {other} {verb} {Words.Metres(apart)} apart.",
            Measured = apart / 100m,
            Allowed = wanted / 100m,
            Unit = "m",
            Advice = "Set their bearings farther apart, or let one of them come from another bearing.",
        };
    }
}

using Generator.Domain;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;

namespace Generator.Rules.Rules;

/// <summary>Standing attackers keep their distance from one another, and everybody is on the floor area: at the opening and whenever one comes in.</summary>
public sealed class Spacing : Rule
{
    public override string Id => "spacing";

    public override string Title => "Standing attackers keep 1 m from one another, and everybody is on the floor area.";

    public override Severity Worst => Severity.Unsafe;

    public override object? Begin(Scene scene, FightState open, Tally tally)
    {
        for (var a = 0; a < scene.Cast; a++)
        {
            var one = open.Attackers[a];
            if (one.Distance > scene.Floor[one.Bearing] && tally.Count(Severity.Unsafe))
            {
                tally.Tell(OffTheFloor(scene, AtEnd(open, Severity.Unsafe, Words.Name(scene, a), string.Empty), a, one.Bearing, one.Distance, "opens"));
            }

            for (var b = a + 1; b < scene.Cast; b++)
            {
                var apart = Apart(one.Bearing, one.Distance, open.Attackers[b]);
                if (apart < scene.Settle.Spacing.Value && tally.Count(Severity.Unsafe))
                {
                    tally.Tell(TooClose(scene, AtEnd(open, Severity.Unsafe, string.Empty, string.Empty), a, b, apart, "open", scene.Settle.Spacing.Value));
                }
            }
        }

        return null;
    }

    public override object? Observe(Scene scene, object? memory, Step step, Tally tally)
    {
        if (!step.Opens || step.Attack is null)
        {
            return null;
        }

        var opener = step.Row.Attacker;
        var from = step.Before.Attackers[opener].Distance;
        if (step.Row.From >= 0 && from > scene.Floor[step.TargetBearing] && tally.Count(Severity.Unsafe))
        {
            tally.Tell(OffTheFloor(scene, At(scene, step, Severity.Unsafe, string.Empty), opener, step.TargetBearing, from, "comes"));
        }

        for (var a = 0; a < scene.Cast; a++)
        {
            var other = step.Before.Attackers[a];
            if (a == opener || Wanted(scene.Settle, other, step.Contact) is not (> 0 and var wanted))
            {
                continue;
            }

            var apart = Apart(step.TargetBearing, step.Distance, other);
            if (apart < wanted && tally.Count(Severity.Unsafe))
            {
                tally.Tell(TooClose(scene, At(scene, step, Severity.Unsafe, string.Empty), opener, a, apart, "stand", wanted));
            }
        }

        return null;
    }

    /// <summary>
    /// Centimetres that one who comes in keeps from another at a moment: the spacing from who stands ready, room to pass from who is upright and busy, held or
    /// recovering; 0 from who lies on the floor or is not on it.
    /// </summary>
    public static int Wanted(Settle settle, AttackerState other, int moment)
    {
        if (other.StandsReadyAt(moment))
        {
            return settle.Spacing.Value;
        }

        var isUpright = other.Posture is not (Posture.FaceDown or Posture.OnBack or Posture.Pinned or Posture.Out);
        return isUpright && other.Entrance <= moment ? settle.LaneBeside.Value : 0;
    }

    private static int Apart(int bearing, int distance, AttackerState other) =>
        FloorGeometry.Apart(new Bearing(bearing).Apart(new Bearing(other.Bearing)), distance, other.Distance);

    private static Finding OffTheFloor(Scene scene, Finding finding, int attacker, int bearing, int distance, string verb)
    {
        var edge = scene.Floor[bearing];
        return finding with
        {
            Message = $"{Words.Name(scene, attacker)} {verb} {Words.Metres(distance)} out at {new Bearing(bearing).ToClockText()} o'clock; the floor is clear for {Words.Metres(edge)} there.",
            Measured = distance / 100m,
            Allowed = edge / 100m,
            Unit = "m",
            Advice = "Start nearer to the mark, or from a deeper side of the floor.",
        };
    }

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

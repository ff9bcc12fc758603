using Generator.Domain;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;

namespace Generator.Rules.Rules;

/// <summary>
/// Nobody is sent or falls through another performer, an obstacle or the floor's edge. The way is the line on the landing bearing
/// out from the mark; who is held or gripping moves with the hero, and a second attacker of the move is part of it.
/// </summary>
public sealed class ClearLane : Rule
{
    public override string Id => "clear-lane";

    public override string Title => "Nobody is sent or falls through another performer, an obstacle or the floor's edge.";

    public override Severity Worst => Severity.Unsafe;

    public override object? Observe(Scene scene, object? memory, Step step, Tally tally)
    {
        if (!step.HasTarget || step.Technique is null || step.Reaction is not { Sends: true } reaction)
        {
            return null;
        }

        var lands = step.After.Attackers[step.Row.Attacker];
        var edge = scene.Floor[lands.Bearing];
        if (!lands.Gone && lands.Distance > edge && tally.Count(Severity.Unsafe))
        {
            tally.Tell(OffTheFloor(scene, step, reaction, lands, edge));
        }

        var clearance = Clearance(scene, reaction);
        for (var a = 0; a < scene.Cast; a++)
        {
            if (!StandsBy(step, a))
            {
                continue;
            }

            var other = step.Before.Attackers[a];
            var beside = FloorGeometry.LaneDistance(new Bearing(other.Bearing).Apart(new Bearing(lands.Bearing)), other.Distance, lands.Distance);
            if (beside < clearance && tally.Count(Severity.Unsafe))
            {
                tally.Tell(InTheWay(scene, step, reaction, a, beside, clearance));
            }
        }

        return null;
    }

    /// <summary>Clear floor wanted on each side of the way of a reaction, in centimetres.</summary>
    public static int Clearance(Scene scene, Reaction reaction) =>
        (reaction.Fall is FallClass.None or FallClass.ToKnee ? scene.Settle.LaneBeside : scene.Settle.LaneBesideFall).Value;

    /// <summary>Somebody else, on the floor and free.</summary>
    private static bool StandsBy(Step step, int attacker)
    {
        var other = step.Before.Attackers[attacker];
        return attacker != step.Row.Attacker && attacker != step.Second && other.Entrance <= step.Start && !other.Gone
            && !other.Posture.IsControlled() && other.Posture != Posture.Gripping;
    }

    private Finding OffTheFloor(Scene scene, Step step, Reaction reaction, AttackerState lands, int edge)
    {
        var clock = new Bearing(lands.Bearing).ToClockText();
        return At(scene, step, Severity.Unsafe, $"{Words.Cap(reaction.Name)} carries {Words.Name(scene, step.Row.Attacker)} {Words.Metres(lands.Distance)} out at {clock} o'clock; the floor is clear for {Words.Metres(edge)}.") with
        {
            Measured = lands.Distance / 100m,
            Allowed = edge / 100m,
            Unit = "m",
            Advice = "Choose a reaction that carries less far, or turn the exchange to a deeper side of the floor.",
        };
    }

    private Finding InTheWay(Scene scene, Step step, Reaction reaction, int other, int beside, int clearance)
    {
        var (who, stands) = (Words.Name(scene, step.Row.Attacker), Words.Name(scene, other));
        return At(scene, step, Severity.Unsafe, $"{Words.Cap(reaction.Name)} sends {who} past {stands} at {Words.Metres(beside)}; the way wants {Words.Metres(clearance)} clear.") with
        {
            Who = $"{who}, {stands}",
            Measured = beside / 100m,
            Allowed = clearance / 100m,
            Unit = "m",
            Advice = $"Send {who} another way, choose a reaction that stays nearer, or move {stands}.",
        };
    }
}

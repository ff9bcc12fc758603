using Generator.Domain;
using Generator.Rules;
using Generator.Solver.Filling;
using Google.OrTools.Sat;

namespace Generator.Solver.Rules;

/// <summary>Nobody is sent or falls through another performer, an obstacle or the floor's edge.</summary>
public sealed class ClearLane : RuleModule
{
    public override string Id => "clear-lane";

    public override void Post(MoveModel model)
    {
        var settle = model.Scene.Settle;
        var standing = FloorSteps.Landings(settle.LaneBeside.Value);
        var falling = FloorSteps.Landings(settle.LaneBesideFall.Value);
        foreach (var slot in model.Slots)
        {
            var sends = model.ReactionIs(slot, r => r.Sends, $"sends[{slot.Index}]");
            var stays = model.ReactionIs(slot, r => r.Sends && !r.RunsOff, $"stays[{slot.Index}]");
            var falls = model.ReactionIs(slot, r => r.Sends && r.Fall is not (FallClass.None or FallClass.ToKnee), $"fallsdown[{slot.Index}]");
            var walks = model.ReactionIs(slot, r => r.Sends && r.Fall is FallClass.None or FallClass.ToKnee, $"walksoff[{slot.Index}]");
            var edge = FloorParts.Edge(model, slot.TargetAfter.Bearing, $"edge[{slot.Index}]");
            model.Cp.Model.Add(slot.TargetAfter.Distance <= edge).OnlyEnforceIf(stays);
            for (var a = 0; a < model.Cast; a++)
            {
                if (!ReferenceEquals(sends, model.Cp.False))
                {
                    Pass(model, slot, a, walks, falls, standing, falling);
                }
            }
        }
    }

    private static void Pass(MoveModel model, SlotVars slot, int a, BoolVar walks, BoolVar falls, IReadOnlyList<FloorStep> standing, IReadOnlyList<FloorStep> falling)
    {
        var cp = model.Cp;
        var other = slot.Before.Attackers[a];
        if (slot.FixedTarget == a || ReferenceEquals(other.Controlled, cp.True) || ReferenceEquals(other.Gripping, cp.True) || ReferenceEquals(other.Gone, cp.True))
        {
            return;
        }

        var name = $"lane[{slot.Index},{a}]";
        var entered = cp.AtMost(model.Entrances[a], slot.Start, name + ".entered");
        var apart = FloorParts.Apart(model, slot.TargetAfter.Bearing, other.Bearing, name + ".apart");
        Limit(walks, standing, ".walks");
        Limit(falls, falling, ".falls");

        void Limit(BoolVar when, IReadOnlyList<FloorStep> steps, string what)
        {
            if (!ReferenceEquals(when, cp.False))
            {
                var counts = cp.And(name + what, [when, slot.Targets[a].Not(), entered, slot.Seconds[a].Not(), other.Controlled.Not(), other.Gripping.Not(), other.Gone.Not()]);
                FloorParts.Keep(model, steps, true, apart, other.Distance, slot.TargetAfter.Distance, counts);
            }
        }
    }
}

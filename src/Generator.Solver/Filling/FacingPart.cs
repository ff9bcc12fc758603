using Generator.Domain;
using Google.OrTools.Sat;

namespace Generator.Solver.Filling;

/// <summary>Where the target lies, how far the hero turns for it, and how far a gap, a grip or a bound lets the hero turn.</summary>
internal static class FacingPart
{
    public static void Build(MoveModel model, SlotVars slot)
    {
        var cp = model.Cp;
        var i = slot.Index;
        var stands = model.OfTarget(slot, a => a.Bearing, 0, $"tbearing[{i}]");
        slot.TargetBearing = model.Options.MostWalkRound == 0 ? stands : cp.Round(stands + slot.WalkRound, $"from[{i}]");
        var seen = cp.Round(slot.TargetBearing - slot.Before.Facing, $"rawseen[{i}]");
        slot.SeenFrom = cp.Int(0, 23, $"seen[{i}]");
        cp.Model.Add(slot.SeenFrom == seen).OnlyEnforceIf(slot.NoTarget.Not());
        cp.Model.Add(slot.SeenFrom == 0).OnlyEnforceIf(slot.NoTarget);
        slot.Relative = cp.Int(0, 23, $"relative[{i}]");
        slot.TurnSize = cp.Int(0, 12, $"turn[{i}]");
        var change = cp.Int(0, 23, $"facingchange[{i}]");
        var kind = cp.ClassOf(slot.Uses, model.Classes.Facing, $"facingclass[{i}]");
        cp.Table([kind, slot.SeenFrom, slot.TurnSize, change, slot.Relative], model.Tables.Facing);
        slot.FacingEnd = cp.Round(slot.Before.Facing + change, $"facing[{i + 1}]");
        slot.TurnCap = Cap(model, slot);
    }

    public static IEnumerable<long[]> Rows(MoveModel model)
    {
        var examples = model.Classes.FacingExamples;
        for (var c = 0; c < examples.Count; c++)
        {
            var technique = examples[c].Technique;
            for (var seen = 0; seen < Bearing.Circle; seen++)
            {
                var relative = default(Bearing).To(new Bearing(seen));
                var turn = technique is null || !examples[c].HasTarget ? Turn.None : technique.Window.TurnFor(relative);
                yield return
                [
                    c, seen, Math.Abs(turn.HalfHours),
                    new Bearing(turn.HalfHours + (technique?.Turn.HalfHours ?? 0)).HalfHours,
                    new Bearing(seen - turn.HalfHours).HalfHours,
                ];
            }
        }
    }

    private static IntVar Cap(MoveModel model, SlotVars slot)
    {
        var cp = model.Cp;
        var settle = model.Scene.Settle;
        var longest = settle.TurnByGap.Count - 1;
        var gap = cp.Int(0, longest, $"turngap[{slot.Index}]");
        cp.Model.AddMinEquality(gap, [slot.Gap, LinearExpr.Constant(longest)]);
        var held = cp.Bool($"held[{slot.Index}]");
        var left = cp.AtMost(LinearExpr.Constant(2 + model.Cast), slot.Before.Left, $"leftheld[{slot.Index}]");
        var right = cp.AtMost(LinearExpr.Constant(2 + model.Cast), slot.Before.Right, $"rightheld[{slot.Index}]");
        cp.Model.AddMaxEquality(held, [left, right]);
        var bound = cp.AtMost(LinearExpr.Constant(1), slot.Before.Bound, $"isbound[{slot.Index}]");
        var cap = cp.Int(0, settle.TurnByGap.Max(), $"turncap[{slot.Index}]");
        var rows = new List<long[]>();
        for (var g = 0; g <= longest; g++)
        {
            rows.Add([g, 0, 0, settle.TurnFor(g)]);
            rows.Add([g, 1, 0, Math.Min(settle.TurnFor(g), settle.TurnWhileHeld)]);
            rows.Add([g, 0, 1, 0]);
            rows.Add([g, 1, 1, 0]);
        }

        cp.Table([gap, held, bound, cap], rows);
        return cap;
    }
}

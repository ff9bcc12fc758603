using Generator.Domain;
using Generator.Rules.Memories;
using Generator.Rules.Shapes;
using Generator.Solver.Filling;
using Google.OrTools.Sat;

namespace Generator.Solver.Rules;

/// <summary>
/// Charges within an exchange for blows with the limb that has just hit beyond one in four of those so far, and for moves wound up against the turn of the one before beyond one in ten (1 each).
/// </summary>
public sealed class Momentum : RuleModule
{
    private static readonly BodyParts[] Limbs = [BodyParts.LeftArm, BodyParts.RightArm, BodyParts.LeftLeg, BodyParts.RightLeg];

    public override string Id => "momentum";

    public override void Post(MoveModel model)
    {
        if (!model.Scene.Judges(FightRule.Momentum))
        {
            return;
        }

        var cp = model.Cp;
        var was = model.Options.Memory?.MemoryOf(Id) as MomentumMemory ?? MomentumMemory.None;
        var last = new Blow(Bool(was.HasTarget), Bool(was.Throws), [.. Limbs.Select(l => Bool((was.Limb & l) != BodyParts.None))], Bool(was.Way > 0), Bool(was.Way < 0));
        var (links, alike) = (new List<LinearExpr> { LinearExpr.Constant(was.Links) }, new List<LinearExpr> { LinearExpr.Constant(was.Alike) });
        var (neighbours, against) = (new List<LinearExpr> { LinearExpr.Constant(was.Neighbours) }, new List<LinearExpr> { LinearExpr.Constant(was.Against) });
        foreach (var slot in model.Slots)
        {
            var (i, now) = (slot.Index, Of(model, slot));
            var neighbour = cp.And($"neighbour[{i}]", slot.Opens.Not(), last.HasTarget, now.HasTarget);
            var link = cp.And($"link[{i}]", neighbour, last.Throws, now.Throws);
            var same = cp.And($"samelimb[{i}]", link, cp.Or($"somelimb[{i}]", [.. Limbs.Select((_, l) => cp.And($"limbagain[{i},{l}]", last.Limbs[l], now.Limbs[l]))]));
            var back = cp.Or($"turnsback[{i}]", cp.And($"backleft[{i}]", last.Clockwise, now.Other), cp.And($"backright[{i}]", last.Other, now.Clockwise));
            Beyond(model, link, same, links, alike, Chain.MostAlike, $"alike[{i}]");
            Beyond(model, neighbour, cp.And($"woundup[{i}]", neighbour, back), neighbours, against, Chain.MostAgainst, $"against[{i}]");
            last = now;
        }

        BoolVar Bool(bool value) => value ? cp.True : cp.False;
    }

    private void Beyond(MoveModel model, BoolVar counts, BoolVar isSo, List<LinearExpr> all, List<LinearExpr> those, int most, string name)
    {
        all.Add(counts);
        those.Add(isSo);
        var tooMany = model.Cp.AtMost((LinearExpr.Sum(all) * most) + 1, LinearExpr.Sum(those) * 100, "toomany" + name);
        model.Charge(Id, model.Cp.And("beyond" + name, isSo, tooMany));
    }

    private static Blow Of(MoveModel model, SlotVars slot)
    {
        var (cp, i) = (model.Cp, slot.Index);
        var hits = model.UseIs(slot, u => u.HasTarget && u.Technique is { IsHit: true }, $"throws[{i}]");
        BoolVar[] limbs = [.. Limbs.Select((limb, l) => model.UseIs(slot, u => u.HasTarget && u.Technique is { IsHit: true } t && (LimbOf(t) & limb) != BodyParts.None, $"limb[{i},{l}]"))];
        var way = cp.Int(-1, 1, $"way[{i}]");
        cp.Table([cp.ClassOf(slot.Uses, model.Classes.Facing, $"turnclass[{i}]"), slot.SeenFrom, way], Ways(model));
        return new Blow(slot.NoTarget.Not(), hits, limbs, cp.Is(way, 1, $"clockwise[{i}]"), cp.Is(way, -1, $"otherway[{i}]"));
    }

    private static IEnumerable<long[]> Ways(MoveModel model)
    {
        var examples = model.Classes.FacingExamples;
        for (var c = 0; c < examples.Count; c++)
        {
            var (technique, hasTarget) = (examples[c].Technique, examples[c].HasTarget);
            for (var seen = 0; seen < Bearing.Circle; seen++)
            {
                var turn = technique is null || !hasTarget ? 0 : technique.Window.TurnFor(default(Bearing).To(new Bearing(seen))).HalfHours + technique.Turn.HalfHours;
                yield return [c, seen, Math.Abs(turn) < Chain.Wound ? 0 : Math.Sign(turn)];
            }
        }
    }

    private static BodyParts LimbOf(Technique technique) => technique.Load.Work & technique.Side switch
    {
        Side.Left => BodyParts.LeftArm | BodyParts.LeftLeg,
        Side.Right => BodyParts.RightArm | BodyParts.RightLeg,
        _ => BodyParts.All,
    };

    /// <summary>What a move leaves for the next one to go on from.</summary>
    private sealed record Blow(ILiteral HasTarget, BoolVar Throws, IReadOnlyList<BoolVar> Limbs, BoolVar Clockwise, BoolVar Other);
}

using Generator.Domain;
using Generator.Rules;
using Generator.Solver.Filling;
using Google.OrTools.Sat;

namespace Generator.Solver.Rules;

/// <summary>Standing attackers keep their distance from one another, and everybody is on the floor: at the opening and whenever one comes in.</summary>
public sealed class Spacing : RuleModule
{
    public override string Id => "spacing";

    public override void Post(MoveModel model)
    {
        if (model.Options.From is null)
        {
            Open(model);
        }

        foreach (var slot in model.Slots)
        {
            var comesIn = slot.HasAttack;
            var stands = model.OfTarget(slot, a => a.Distance, 0, $"comesfrom[{slot.Index}]");
            if (model.Options.MostWalkRound > 0)
            {
                var round = model.Cp.Is(slot.WalkRound, 0, $"straight[{slot.Index}]");
                model.Cp.Model.Add(stands <= FloorParts.Edge(model, slot.TargetBearing, $"fromedge[{slot.Index}]")).OnlyEnforceIf([round.Not(), comesIn]);
            }

            for (var a = 0; a < model.Cast; a++)
            {
                ComesIn(model, slot, a);
            }
        }
    }

    private static void Open(MoveModel model)
    {
        for (var a = 0; a < model.Cast; a++)
        {
            var one = model.Start.Attackers[a];
            model.Cp.Model.Add(one.Distance <= FloorParts.Edge(model, one.Bearing, $"openedge[{a}]"));
            for (var b = a + 1; b < model.Cast; b++)
            {
                var other = model.Start.Attackers[b];
                Keep(model, FloorParts.Apart(model, one.Bearing, other.Bearing, $"openapart[{a},{b}]"), one.Distance, other.Distance, [], $"open[{a},{b}]");
            }
        }
    }

    /// <summary>One who stands ready where another comes in keeps the distance.</summary>
    private static void ComesIn(MoveModel model, SlotVars slot, int a)
    {
        var cp = model.Cp;
        var other = slot.Before.Attackers[a];
        if (ReferenceEquals(other.Active, cp.False) || slot.FixedTarget == a)
        {
            return;
        }

        var name = $"beside[{slot.Index},{a}]";
        var contact = slot.Start + model.Scene.Settle.ContactAfter.Value;
        var ready = cp.AtMost(other.ReadyAt, contact, name + ".ready");
        var entered = cp.AtMost(model.Entrances[a], contact, name + ".entered");
        Keep(model, FloorParts.Apart(model, slot.TargetBearing, other.Bearing, name), slot.Distance, other.Distance,
            [slot.HasAttack, slot.Targets[a].Not(), other.Active, ready, entered], name);
    }

    /// <summary>Two places are far enough apart: for each angle and place of the second, the first is nearer or farther than a stretch of its ray.</summary>
    private static void Keep(MoveModel model, IntVar apart, IntVar first, IntVar second, ILiteral[] when, string name)
    {
        var cp = model.Cp;
        var one = FloorParts.Tens(model, first, name + ".one");
        var other = FloorParts.Tens(model, second, name + ".other");
        var (low, high) = Engine.Cp.Range(other);
        var count = high - low + 1;
        var from = new long[13 * count];
        var to = new long[13 * count];
        for (var delta = 0; delta <= 12; delta++)
        {
            for (var tens = low; tens <= high; tens++)
            {
                var (nearest, farthest) = Stretch(delta, (int)tens * 10, model.Scene.Settle.Spacing.Value);
                from[(delta * count) + tens - low] = nearest;
                to[(delta * count) + tens - low] = farthest;
            }
        }

        var place = cp.Int(0, (13 * count) - 1, name + ".at");
        cp.Model.Add(place == (apart * count) + other - low);
        var begins = cp.Int(from.Min(), from.Max(), name + ".from");
        var ends = cp.Int(to.Min(), to.Max(), name + ".to");
        cp.Model.AddElement(place, from, begins);
        cp.Model.AddElement(place, to, ends);
        var nearer = cp.Bool(name + ".nearer");
        cp.Model.Add((LinearExpr)one + 1 <= begins).OnlyEnforceIf([.. when, nearer]);
        cp.Model.Add((LinearExpr)one >= ends + 1).OnlyEnforceIf([.. when, nearer.Not()]);
    }

    /// <summary>Tens of centimetres on the first's ray that are too close to the second; an empty stretch is (1000, −1) and binds nobody.</summary>
    private static (int Nearest, int Farthest) Stretch(int delta, int second, int spacing)
    {
        var close = Enumerable.Range(0, 320).Where(t => FloorGeometry.Apart(delta, t * 10, second) < spacing).ToList();
        return close.Count == 0 ? (1000, -1) : (close[0], close[^1]);
    }
}

using Generator.Domain;
using Generator.Solver.Filling;
using Google.OrTools.Sat;

namespace Generator.Solver.Rules;

/// <summary>
/// Everybody upright keeps room from everybody else upright, and stands on the floor. Beforehand: the floor, and who opens or stands ready so near that no rounding helps; in answers: everything else,
/// to the centimetre.
/// </summary>
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

            model.Cp.Model.Add(slot.Distance <= FloorParts.Edge(model, slot.TargetBearing, $"contactedge[{slot.Index}]")).OnlyEnforceIf(comesIn);
            for (var a = 0; a < model.Cast; a++)
            {
                ComesIn(model, slot, a);
            }
        }
    }

    public override IEnumerable<IReadOnlyList<ILiteral>> Refute(ModelAnswer answer)
    {
        var rests = new FloorRests(answer);
        return [.. rests.Opening(), .. rests.AtContact(), .. rests.BetweenMoves(), .. rests.AtTheHero(lying: false), .. rests.WalkingRound(), .. new FloorClashes(answer).Of(FloorConcern.Spacing), .. Entrances(new FloorEntrances(answer))];
    }

    private static IEnumerable<IReadOnlyList<ILiteral>> Entrances(FloorEntrances entrances) =>
        [.. entrances.Of(FloorConcern.Spacing), .. entrances.NoWayOn(), .. entrances.Late()];

    private static void Open(MoveModel model)
    {
        for (var a = 0; a < model.Cast; a++)
        {
            var one = model.Start.Attackers[a];
            model.Cp.Model.Add(one.Distance <= FloorParts.Edge(model, one.Bearing, $"openedge[{a}]"));
            for (var b = a + 1; b < model.Cast; b++)
            {
                var other = model.Start.Attackers[b];
                Keep(model, model.Apart(one.Bearing, other.Bearing, $"openapart[{a},{b}]"), one.Distance, other.Distance, model.Scene.Settle.Spacing.Value, [], $"open[{a},{b}]");
            }
        }
    }

    /// <summary>One who stands ready where another comes in keeps the distance.</summary>
    private static void ComesIn(MoveModel model, SlotVars slot, int a)
    {
        var cp = model.Cp;
        var other = slot.Before.Attackers[a];
        if (slot.FixedTarget == a)
        {
            return;
        }

        var name = $"beside[{slot.Index},{a}]";
        var contact = slot.Start + model.Scene.Settle.ContactAfter.Value;
        var ready = cp.AtMost(other.ReadyAt, contact, name + ".ready");
        var entered = cp.AtMost(model.Entrances[a], contact, name + ".entered");
        var apart = model.Apart(slot.TargetBearing, other.Bearing, name);
        Keep(model, apart, slot.Distance, other.Distance,
            model.Scene.Settle.Spacing.Value, [slot.HasAttack, slot.Targets[a].Not(), other.Active, ready, entered], name);
    }

    /// <summary>Two places are far enough apart: for each angle and place of the second, the first stands inside or outside of it by a step.</summary>
    private static void Keep(MoveModel model, IntVar apart, IntVar first, IntVar second, int spacing, ILiteral[] when, string name)
    {
        var cp = model.Cp;
        var counts = when.Length > 0 ? cp.And(name + ".counts", when) : cp.True;
        var inside = cp.Bool(name + ".inside");
        FloorParts.Keep(model, FloorSteps.Inside(spacing), true, apart, second, first, counts, inside);
        FloorParts.Keep(model, FloorSteps.Outside(spacing), false, apart, second, first, counts, inside.Not());
    }
}

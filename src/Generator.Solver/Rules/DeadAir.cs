using Generator.Domain;
using Generator.Solver.Filling;
using Generator.Solver.Staging;
using Google.OrTools.Sat;

namespace Generator.Solver.Rules;

/// <summary>A point for each half count of a gap beyond the longest pause; far longer gaps are forbidden, and a first move long after somebody could have come.</summary>
public sealed class DeadAir : RuleModule, IPlanRule
{
    public override string Id => "dead-air";

    public override void Post(MoveModel model)
    {
        var longest = model.Scene.Brief.Pace.LongestPause.Value;
        var begins = model.Options.From is not { Moves: > 0 };
        for (var a = 0; begins && model.Slots.Count > 0 && model.Scene.LatestOfAll < int.MaxValue && a < model.Cast; a++)
        {
            // From where they open to striking distance, whenever they come in.
            LinearExpr walk = model.Options.From is { } state ? LinearExpr.Constant(model.Scene.WalkTime(a, state.Attackers[a].Distance)) : model.Start.Attackers[a].Threat - model.Entrances[a];
            model.Cp.Model.Add(model.Slots[0].Start <= walk + (model.Scene.Brief.Attackers[a].Entrance?.Value ?? 0) + Pace.DeadAirBreaks.Value);
        }

        foreach (var slot in model.Slots.Skip(begins ? 1 : 0))
        {
            model.Cp.Model.Add(slot.Gap <= Pace.DeadAirBreaks.Value);
            if (longest < Pace.DeadAirBreaks.Value)
            {
                model.Charge(Id, model.Cp.Positive(slot.Gap - longest, Pace.DeadAirBreaks.Value, $"deadair[{slot.Index}]"));
            }
        }
    }

    public void Post(StagingModel plan)
    {
        for (var j = 1; j < plan.Exchanges.Count; j++)
        {
            var (before, exchange) = (plan.Exchanges[j - 1], plan.Exchanges[j]);
            plan.Cp.Model.Add(exchange.Start <= before.End + Pace.DeadAirBreaks.Value);
            var gap = plan.Cp.Positive((LinearExpr)exchange.Start - before.End - plan.Scene.Brief.Pace.LongestPause.Value, plan.Horizon, $"deadair[{j}]");
            plan.Charge(gap);
        }
    }
}

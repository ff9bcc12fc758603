using Generator.Domain;
using Generator.Solver.Filling;
using Generator.Solver.Staging;

namespace Generator.Solver.Rules;

/// <summary>A point for each half count of a gap beyond the longest pause; far longer gaps are forbidden, and a first move long after somebody could have come.</summary>
public sealed class DeadAir : RuleModule
{
    public override string Id => "dead-air";

    public override void Post(MoveModel model)
    {
        var longest = model.Scene.Brief.Pace.LongestPause.Value;
        var begins = model.Options.From is not { Moves: > 0 };
        if (begins && model.Slots.Count > 0 && model.Scene.LatestFirst < int.MaxValue)
        {
            model.Cp.Model.Add(model.Slots[0].Start <= model.Scene.LatestFirst);
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

    public override void Post(StagingModel plan)
    {
        for (var j = 1; j < plan.Exchanges.Count; j++)
        {
            var (before, exchange) = (plan.Exchanges[j - 1], plan.Exchanges[j]);
            plan.Cp.Model.Add(exchange.Start <= before.End + Pace.DeadAirBreaks.Value);
            var gap = plan.Cp.Positive((Google.OrTools.Sat.LinearExpr)exchange.Start - before.End - plan.Scene.Brief.Pace.LongestPause.Value, plan.Horizon, $"deadair[{j}]");
            plan.Charge(gap);
        }
    }
}

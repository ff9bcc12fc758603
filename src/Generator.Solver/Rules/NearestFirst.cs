using Generator.Domain;
using Generator.Solver.Filling;
using Generator.Solver.Staging;

namespace Generator.Solver.Rules;

/// <summary>Whoever opens an exchange has the least threat time of all active attackers, within one count.</summary>
public sealed class NearestFirst : RuleModule, IPlanRule
{
    public override string Id => "nearest-first";

    public override void Post(MoveModel model)
    {
        foreach (var slot in model.Slots)
        {
            for (var a = 0; a < model.Cast; a++)
            {
                var own = slot.Before.Attackers[a];
                for (var b = 0; b < model.Cast; b++)
                {
                    var other = slot.Before.Attackers[b];
                    if (a != b)
                    {
                        model.Cp.Model.Add(own.Threat <= other.Threat + HalfCounts.PerCount).OnlyEnforceIf([slot.Targets[a], slot.Opens, own.Active, other.Active]);
                    }
                }
            }
        }
    }

    public void Post(StagingModel plan)
    {
        foreach (var exchange in plan.Exchanges)
        {
            for (var a = 0; a < plan.Scene.Cast; a++)
            {
                for (var b = 0; b < plan.Scene.Cast; b++)
                {
                    if (a != b && (exchange.Index > 0 || (plan.From.Attackers[a].IsActive && plan.From.Attackers[b].IsActive)))
                    {
                        plan.Cp.Model.Add(exchange.Threats[a] <= exchange.Threats[b] + HalfCounts.PerCount).OnlyEnforceIf([exchange.By[a], exchange.Out[b].Not()]);
                    }
                }
            }
        }
    }
}

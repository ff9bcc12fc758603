using Generator.Solver.Filling;
using Generator.Solver.Staging;

namespace Generator.Solver.Rules;

/// <summary>An attacker who is out does nothing more.</summary>
public sealed class OutStaysOut : RuleModule, IPlanRule
{
    public override string Id => "out-stays-out";

    public override void Post(MoveModel model)
    {
        foreach (var slot in model.Slots)
        {
            for (var a = 0; a < model.Cast; a++)
            {
                model.Cp.Model.AddImplication(slot.Targets[a], slot.Before.Attackers[a].Out.Not());
            }
        }
    }

    public void Post(StagingModel plan)
    {
        foreach (var exchange in plan.Exchanges)
        {
            for (var a = 0; a < plan.Scene.Cast; a++)
            {
                plan.Cp.Model.AddImplication(exchange.By[a], exchange.Out[a].Not());
            }
        }
    }
}

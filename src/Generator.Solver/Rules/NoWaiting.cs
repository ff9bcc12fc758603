using Generator.Domain;
using Generator.Solver.Filling;
using Generator.Solver.Staging;
using Google.OrTools.Sat;

namespace Generator.Solver.Rules;

/// <summary>A point for each half count by which somebody who could attack waits longer than the patience: when taken on, or at the end.</summary>
public sealed class NoWaiting : RuleModule, IPlanRule
{
    public override string Id => "no-waiting";

    public override void Post(MoveModel model)
    {
        var cp = model.Cp;
        var patience = model.Scene.Brief.Pace.Patience.Value;
        var far = model.Far;
        foreach (var slot in model.Slots)
        {
            var ready = slot.EffectiveIs[(int)Posture.Ready];
            var takenOn = cp.Or($"takenon[{slot.Index}]", slot.HasAttack, ready);
            var over = cp.Int(-far, far, $"waits[{slot.Index}]");
            for (var a = 0; a < model.Cast; a++)
            {
                cp.Model.Add(over == slot.Start + (model.Scene.Settle.ContactAfter.Value - patience) - slot.Before.Attackers[a].Threat).OnlyEnforceIf([slot.Targets[a], takenOn]);
            }

            cp.Model.Add(over == 0).OnlyEnforceIf(takenOn.Not());
            model.Charge(Id, cp.Positive(over, far, $"waiting[{slot.Index}]"));
        }

        if (model.Options.Ends)
        {
            Close(model, patience, far);
        }
    }

    public void Post(StagingModel plan)
    {
        var cp = plan.Cp;
        var patience = plan.Scene.Brief.Pace.Patience.Value;
        var far = plan.Horizon * 4;
        foreach (var exchange in plan.Exchanges)
        {
            var over = cp.Int(-far, far, $"waits[{exchange.Index}]");
            for (var a = 0; a < plan.Scene.Cast; a++)
            {
                cp.Model.Add(over == exchange.Start + (plan.Scene.Settle.ContactAfter.Value - patience) - exchange.Threats[a]).OnlyEnforceIf(exchange.By[a]);
            }

            cp.Model.Add(over == 0).OnlyEnforceIf(exchange.Used.Not());
            plan.Charge(cp.Positive(over, far, $"waiting[{exchange.Index}]"));
        }

        for (var a = 0; a < plan.Scene.Cast; a++)
        {
            var over = cp.Int(-far, far, $"waitsatend[{a}]");
            cp.Model.Add(over == (LinearExpr)plan.EndTime - plan.EndThreats[a] - patience).OnlyEnforceIf(plan.EndOut[a].Not());
            cp.Model.Add(over == 0).OnlyEnforceIf(plan.EndOut[a]);
            plan.Charge(cp.Positive(over, far, $"waitingatend[{a}]"));
        }
    }

    private void Close(MoveModel model, int patience, int far)
    {
        var cp = model.Cp;
        for (var a = 0; a < model.Cast; a++)
        {
            var left = model.End.Attackers[a];
            var over = cp.Int(-far, far, $"waitsatend[{a}]");
            cp.Model.Add(over == (LinearExpr)model.End.Time - left.Threat - patience).OnlyEnforceIf(left.Active);
            cp.Model.Add(over == 0).OnlyEnforceIf(left.Active.Not());
            model.Charge(Id, cp.Positive(over, far, $"waitingatend[{a}]"));
        }
    }
}

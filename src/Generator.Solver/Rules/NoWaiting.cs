using Generator.Domain;
using Generator.Solver.Filling;
using Google.OrTools.Sat;

namespace Generator.Solver.Rules;

/// <summary>A point for each half count by which somebody who could attack waits longer than the patience: when taken on, or at the end.</summary>
public sealed class NoWaiting : RuleModule
{
    public override string Id => "no-waiting";

    public override void Post(MoveModel model)
    {
        var cp = model.Cp;
        var patience = model.Scene.Brief.Pace.Patience.Value;
        var far = model.Options.Horizon * 4;
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

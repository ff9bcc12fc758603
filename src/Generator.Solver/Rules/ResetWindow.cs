using Generator.Solver.Filling;

namespace Generator.Solver.Rules;

/// <summary>No attack lands before its attacker's threat time and the way round.</summary>
public sealed class ResetWindow : RuleModule
{
    public override string Id => "reset-window";

    public override void Post(MoveModel model)
    {
        var settle = model.Scene.Settle;
        foreach (var slot in model.Slots)
        {
            var way = model.Cp.Int(0, 12, $"way[{slot.Index}]");
            model.Cp.Model.AddAbsEquality(way, slot.WalkRound);
            for (var a = 0; a < model.Cast; a++)
            {
                var own = slot.Before.Attackers[a];
                model.Cp.Model
                    .Add(slot.Start + settle.ContactAfter.Value >= own.Threat + (way * settle.WalkRoundPerHalfHour.Value))
                    .OnlyEnforceIf([slot.Targets[a], slot.HasAttack, own.Active]);
            }
        }
    }
}

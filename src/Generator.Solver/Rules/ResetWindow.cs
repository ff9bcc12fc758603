using Generator.Solver.Filling;
using Generator.Solver.Staging;
using Google.OrTools.Sat;

namespace Generator.Solver.Rules;

/// <summary>No attack lands before its attacker's threat time and the way round: beforehand. Nor is it begun on the way on which its attacker is still being sent: in answers.</summary>
public sealed class ResetWindow : RuleModule, IPlanRule
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

    public override IEnumerable<IReadOnlyList<ILiteral>> Refute(ModelAnswer answer) => new FloorClashes(answer).StillUnderWay();

    public void Post(StagingModel plan)
    {
        // A plan's exchange begins with an attack, unless it goes on with somebody who is held or open at the start.
        foreach (var exchange in plan.Exchanges)
        {
            for (var a = 0; a < plan.Scene.Cast; a++)
            {
                if (exchange.Index > 0 || plan.From.Attackers[a].PostureAt(plan.From.Time) == Generator.Domain.Posture.Ready)
                {
                    plan.Cp.Model.Add(exchange.Start + plan.Scene.Settle.ContactAfter.Value >= exchange.Threats[a]).OnlyEnforceIf(exchange.By[a]);
                }
            }
        }
    }
}

using Generator.Solver.Filling;

namespace Generator.Solver.Rules;

/// <summary>Skill, limits, wardrobe and surface allow what everybody is asked to do.</summary>
public sealed class Able : RuleModule
{
    public override string Id => "able";

    public override void Post(MoveModel model)
    {
        var able = model.Scene.Able;
        foreach (var slot in model.Slots)
        {
            model.Cp.Model.Add(model.OverUses(slot, u => u.Index >= 0 && able.WhyNotTechnique(u.Index) is not null ? 1 : 0) == 0);
            for (var a = 0; a < model.Cast; a++)
            {
                var attacker = a;
                var asked = model.OverUses(slot, u => u.HasTarget && able.WhyNotOn(u.Index, attacker) is not null ? 1 : 0)
                    + model.OverAttacks(slot, k => able.WhyNotAttack(k, attacker) is not null ? 1 : 0)
                    + model.OverReactions(slot, r => able.WhyNotReaction(r, attacker) is not null ? 1 : 0);
                model.Cp.Model.Add(asked == 0).OnlyEnforceIf(slot.Targets[a]);
                if (!ReferenceEquals(slot.TakesTwo, model.Cp.False))
                {
                    var taken = model.OverUses(slot, u => u.Technique is { TakesTwo: true } && able.WhyNotOn(u.Index, attacker) is not null ? 1 : 0)
                        + model.OverReactions(slot, r => able.WhyNotReaction(r, attacker) is not null ? 1 : 0);
                    model.Cp.Model.Add(taken == 0).OnlyEnforceIf([slot.TakesTwo, slot.Seconds[a]]);
                }
            }
        }
    }
}

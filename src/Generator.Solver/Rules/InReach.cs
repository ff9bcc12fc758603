using Generator.Solver.Filling;
using Google.OrTools.Sat;

namespace Generator.Solver.Rules;

/// <summary>The distance at contact, with the hero's step, lies in the band for these two bodies.</summary>
public sealed class InReach : RuleModule
{
    public override string Id => "in-reach";

    public override void Post(MoveModel model)
    {
        foreach (var slot in model.Slots)
        {
            for (var a = 0; a < model.Cast; a++)
            {
                var attacker = a;
                var least = model.OverUses(slot, u => u.HasTarget ? model.Scene.TechniqueReach(u.Index, attacker).Least : 0);
                var most = model.OverUses(slot, u => u.HasTarget ? model.Scene.TechniqueReach(u.Index, attacker).Most : 0);
                model.Cp.Model.Add((LinearExpr)slot.Distance >= least).OnlyEnforceIf(slot.Targets[a]);
                model.Cp.Model.Add((LinearExpr)slot.Distance <= most + slot.Follows).OnlyEnforceIf(slot.Targets[a]);
            }
        }
    }
}

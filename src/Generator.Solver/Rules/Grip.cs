using Generator.Solver.Filling;

namespace Generator.Solver.Rules;

/// <summary>Nobody acts through a grip that stops them, no hold is forgotten, and every grip ends.</summary>
public sealed class Grip : RuleModule
{
    public override string Id => "grip";

    public override void Post(MoveModel model)
    {
        var solver = model.Cp.Model;
        foreach (var slot in model.Slots)
        {
            solver.Add(slot.LeftFault != 2);
            solver.Add(slot.RightFault != 2);
            solver.Add(slot.BoundFault == 0);
            for (var a = 0; a < model.Cast; a++)
            {
                var attacker = slot.Before.Attackers[a];
                solver.AddBoolOr([slot.Targets[a].Not(), slot.HasAttack.Not(), attacker.Controlled.Not()]);
                solver.AddBoolOr([slot.Targets[a].Not(), slot.HasAttack.Not(), attacker.Gripping.Not()]);
            }
        }

        if (model.Options.Ends)
        {
            solver.Add(model.End.Left <= 1);
            solver.Add(model.End.Right <= 1);
            solver.Add(model.End.Bound == 0);
        }
    }
}

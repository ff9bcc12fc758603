using Generator.Solver.Filling;

namespace Generator.Solver.Rules;

/// <summary>An attacker who is out does nothing more.</summary>
public sealed class OutStaysOut : RuleModule
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
}

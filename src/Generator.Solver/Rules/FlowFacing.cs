using Generator.Solver.Filling;

namespace Generator.Solver.Rules;

/// <summary>The turn that brings the target into the technique's window fits the gap.</summary>
public sealed class FlowFacing : RuleModule
{
    public override string Id => "flow-facing";

    public override void Post(MoveModel model)
    {
        foreach (var slot in model.Slots)
        {
            model.Cp.Model.Add(slot.TurnSize <= slot.TurnCap);
        }
    }
}

using Generator.Solver.Filling;

namespace Generator.Solver.Rules;

/// <summary>Each hand that the technique needs is in a state it accepts.</summary>
public sealed class FlowHands : RuleModule
{
    public override string Id => "flow-hands";

    public override void Post(MoveModel model)
    {
        foreach (var slot in model.Slots)
        {
            model.Cp.Model.Add(slot.LeftFault != 1);
            model.Cp.Model.Add(slot.RightFault != 1);
        }
    }
}

using Generator.Solver.Filling;

namespace Generator.Solver.Rules;

/// <summary>The gap allows the change of stance; a bound hero changes none.</summary>
public sealed class FlowStance : RuleModule
{
    public override string Id => "flow-stance";

    public override void Post(MoveModel model)
    {
        foreach (var slot in model.Slots)
        {
            var cp = model.Cp;
            cp.Model.Add(slot.StanceTime <= slot.Gap);
            var free = cp.Is(slot.Before.Bound, 0, $"free[{slot.Index}]");
            cp.Model.Add(slot.StanceTime == 0).OnlyEnforceIf(free.Not());
        }
    }
}

using Generator.Solver.Filling;

namespace Generator.Solver.Rules;

/// <summary>No move starts before the one before it is over, which at this tempo lasts at least its fewest seconds.</summary>
public sealed class TempoFloor : RuleModule
{
    public override string Id => "tempo-floor";

    public override void Post(MoveModel model)
    {
        foreach (var slot in model.Slots)
        {
            model.Cp.Model.Add(slot.Start >= slot.Before.Time);
        }
    }
}

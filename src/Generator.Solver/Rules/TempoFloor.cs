using Generator.Domain;
using Generator.Solver.Filling;

namespace Generator.Solver.Rules;

/// <summary>At this tempo no technique and no attack is faster than its fewest seconds; moves neither overlap nor stand
/// out of order (a gap is never negative).</summary>
public sealed class TempoFloor : RuleModule
{
    public override string Id => "tempo-floor";

    public override void Post(MoveModel model)
    {
        foreach (var slot in model.Slots)
        {
            var tooFast = model.OverUses(slot, u => u.Technique is { } t && TooFast(model, t.Length, t.FewestSeconds) ? 1 : 0)
                + model.OverAttacks(slot, k => TooFast(model, model.Scene.Book.Attacks[k].Length, model.Scene.Book.Attacks[k].FewestSeconds) ? 1 : 0);
            model.Cp.Model.Add(tooFast == 0);
        }
    }

    private static bool TooFast(MoveModel model, HalfCounts length, decimal fewest) => model.Scene.Brief.Tempo.SecondsIn(length) < fewest;
}

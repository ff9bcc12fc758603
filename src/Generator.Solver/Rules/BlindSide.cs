using Generator.Domain;
using Generator.Solver.Filling;

namespace Generator.Solver.Rules;

/// <summary>An attack from outside the hero's sight takes at least a reaction time; its cue is written when the routine is read off the model.</summary>
public sealed class BlindSide : RuleModule
{
    public override string Id => "blind-side";

    public override void Post(MoveModel model)
    {
        var settle = model.Scene.Settle;
        var seen = Google.OrTools.Util.Domain.FromValues([.. Enumerable.Range(0, Bearing.Circle).Where(b => default(Bearing).Apart(new Bearing(b)) <= settle.SightHalfAngle).Select(b => (long)b)]);
        foreach (var slot in model.Slots)
        {
            var tooShort = model.AttackIs(slot, k => model.Scene.Brief.Tempo.SecondsIn(k.Length) < settle.ReactionSeconds, $"tooshort[{slot.Index}]");
            model.Cp.Model.AddLinearExpressionInDomain(slot.SeenFrom, seen).OnlyEnforceIf(tooShort);
        }
    }
}

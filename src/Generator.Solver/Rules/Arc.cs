using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Memories;
using Generator.Solver.Filling;
using Google.OrTools.Sat;

namespace Generator.Solver.Rules;

/// <summary>Charges for moves heavier than their phase of the arc wants and, at the end, for a wanted peak that is missing.</summary>
public sealed class Arc : RuleModule
{
    public override string Id => "arc";

    public override void Post(MoveModel model)
    {
        if (ArcShape.Of(model.Scene.Brief) is not { } shape)
        {
            return;
        }

        var weights = model.Slots.Select(s => model.Cp.Pick(s.Uses, u => model.Vocabulary.Uses[u].Technique?.Weight ?? 0, $"weight[{s.Index}]")).ToList();
        var phases = model.Slots.Select(s => Parts.Of(model, s, shape.Caps.Count - 1, shape.PhaseOf, "phase")).ToList();
        var rows = Rows(shape).ToList();
        for (var i = 0; i < weights.Count; i++)
        {
            var over = model.Cp.Int(0, 5, $"heavy[{i}]");
            model.Cp.Table([weights[i], phases[i], over], rows);
            model.Charge(Id, over);
        }

        if (model.Options.Ends)
        {
            Peaks(model, shape, weights, phases);
        }
    }

    private static IEnumerable<long[]> Rows(ArcShape shape)
    {
        for (var weight = 0; weight <= 5; weight++)
        {
            for (var phase = 0; phase < shape.Caps.Count; phase++)
            {
                yield return [weight, phase, Math.Max(0, weight - shape.Caps[phase])];
            }
        }
    }

    private void Peaks(MoveModel model, ArcShape shape, List<IntVar> weights, List<IntVar> phases)
    {
        var cp = model.Cp;
        var heaviest = model.Options.Memory?.MemoryOf(Id) is ArcMemory memory ? memory.Heaviest : new int[shape.Caps.Count];
        for (var n = 0; n < shape.Peaks.Count; n++)
        {
            var peak = shape.Peaks[n];
            var there = new List<LinearExpr> { LinearExpr.Constant(peak.Max(p => heaviest[p])) };
            for (var i = 0; i < weights.Count; i++)
            {
                var inside = cp.Bool($"inpeak[{n},{i}]");
                var phasesOfPeak = Google.OrTools.Util.Domain.FromValues([.. peak.Select(p => (long)p)]);
                cp.Model.AddLinearExpressionInDomain(phases[i], phasesOfPeak).OnlyEnforceIf(inside);
                cp.Model.AddLinearExpressionInDomain(phases[i], phasesOfPeak.Complement()).OnlyEnforceIf(inside.Not());
                var weight = cp.Int(0, 5, $"peakweight[{n},{i}]");
                cp.Model.Add(weight == weights[i]).OnlyEnforceIf(inside);
                cp.Model.Add(weight == 0).OnlyEnforceIf(inside.Not());
                there.Add(weight);
            }

            var reached = cp.Int(0, 5, $"peak[{n}]");
            cp.Model.AddMaxEquality(reached, there);
            model.Charge(Id, cp.Positive(ArcShape.PeakFrom - (LinearExpr)reached, ArcShape.PeakFrom, $"nopeak[{n}]"));
        }
    }
}

using Generator.Domain;
using Generator.Solver.Filling;
using Generator.Solver.Staging;
using Google.OrTools.Sat;

namespace Generator.Solver.Rules;

/// <summary>The routine lasts the counts, or has the moves, asked for; rows that do not end it must not overrun it.</summary>
public sealed class Length : RuleModule, IPlanRule
{
    public override string Id => "length";

    public override void Post(MoveModel model)
    {
        if (model.Scene.Brief.Length is not { } length)
        {
            return;
        }

        var solver = model.Cp.Model;
        if (length.Counts is { } counts)
        {
            solver.Add(model.End.Time <= HalfCounts.PerCount * (counts + length.Tolerance));
            if (model.Options.Ends)
            {
                solver.Add(model.End.Time >= HalfCounts.PerCount * (counts - length.Tolerance));
            }
        }

        if (length.Moves is { } moves)
        {
            var tolerance = length.Counts is null ? length.Tolerance : 1;
            var number = LinearExpr.Sum([.. model.Slots.Select(s => (LinearExpr)s.Used), LinearExpr.Constant(model.Options.From?.Moves ?? 0)]);
            solver.Add(number <= moves + tolerance);
            if (model.Options.Ends)
            {
                solver.Add(number >= moves - tolerance);
            }
        }
    }

    public void Post(StagingModel plan)
    {
        if (plan.Scene.Brief.Length is not { } length)
        {
            return;
        }

        if (length.Counts is { } counts && plan.Ends)
        {
            plan.Cp.Model.Add(plan.EndTime >= HalfCounts.PerCount * (counts - length.Tolerance));
        }

        if (length.Moves is { } moves)
        {
            var tolerance = length.Counts is null ? length.Tolerance : 1;
            var number = LinearExpr.Sum([.. plan.Exchanges.Select(e => (LinearExpr)e.Moves), LinearExpr.Constant(plan.From.Moves)]);
            plan.Cp.Model.Add(number <= moves + tolerance);
            if (plan.Ends)
            {
                plan.Cp.Model.Add(number >= moves - tolerance);
            }
        }
    }
}

using Generator.Domain;
using Generator.Rules.Memories;
using Generator.Solver.Engine;
using Generator.Solver.Filling;
using Generator.Solver.Staging;
using Google.OrTools.Sat;

namespace Generator.Solver.Rolling;

/// <summary>
/// What a window should leave behind for the rest of the routine. Aims only steer the search within a window; they are not points and no
/// rule: the audit never sees them.
/// </summary>
internal static class WindowAims
{
    /// <summary>The cost of leaving the rest worse off.</summary>
    public static LinearExpr Of(MoveModel model, Plan plan, int horizon)
    {
        var cp = model.Cp;
        var terms = new List<LinearExpr> { LinearExpr.Constant(0) };
        var patience = model.Scene.Brief.Pace.Patience.Value;
        var outs = LinearExpr.Sum(model.End.Attackers.Select(a => (LinearExpr)a.Out));
        var time = (model.Options.From?.Time ?? 0) + (int)(OutSchedule.PerMove * model.Slots.Count);
        var moves = (model.Options.From?.Moves ?? 0) + model.Slots.Count;
        var wanted = Math.Max(OutSchedule.Wanted(model.Scene.Brief, time, moves), AlreadyOut(model) + plan.OutsWithin(model.Slots.Count));
        terms.Add(cp.Positive(wanted - outs, model.Cast, "toofewout") * 12);
        terms.Add(cp.Positive(outs - wanted, model.Cast, "toomanyout") * 8);
        for (var a = 0; a < model.Cast; a++)
        {
            var left = model.End.Attackers[a];
            var over = cp.Int(-horizon * 4, horizon * 4, $"aimwaits[{a}]");
            cp.Model.Add(over == (LinearExpr)model.End.Time - left.Threat - (patience - 4)).OnlyEnforceIf(left.Active);
            cp.Model.Add(over == 0).OnlyEnforceIf(left.Active.Not());
            terms.Add(cp.Positive(over, horizon * 4, $"aimwaiting[{a}]"));
        }

        var onFloor = cp.AtMost(LinearExpr.Constant((int)Stance.FloorBack), model.End.Stance, "aimfloor");
        terms.Add(LinearExpr.Term(onFloor, 6));
        Due(model, terms, OutSchedule.Progress(model.Scene.Brief, time, moves));
        return LinearExpr.Sum(terms);
    }

    private static int AlreadyOut(MoveModel model) => model.Options.From?.Attackers.Count(a => a.Posture == Posture.Out) ?? 0;

    private static void Due(MoveModel model, List<LinearExpr> terms, double progress)
    {
        var memory = model.Options.Memory?.MemoryOf("setbacks") as SetbacksMemory ?? SetbacksMemory.None;
        Count(model, terms, model.Scene.Brief.Setbacks, memory.Setbacks, progress, u => u.Technique is { Family: Family.Setback }, "setbacks");
        Count(model, terms, model.Scene.Brief.Pauses, memory.Pauses, progress, u => u.Technique is { IsStoryPause: true }, "pauses");
    }

    private static void Count(MoveModel model, List<LinearExpr> terms, int? asked, int before, double progress, Func<Use, bool> counts, string name)
    {
        if (asked is not { } number || number <= before)
        {
            return;
        }

        var due = (int)Math.Round(number * Math.Min(1.0, progress / 0.55), MidpointRounding.AwayFromZero);
        var done = LinearExpr.Sum(model.Slots.Select(s => model.OverUses(s, u => counts(u) ? 1 : 0))) + before;
        terms.Add(model.Cp.Positive(due - done, number, "due" + name) * 15);
    }
}

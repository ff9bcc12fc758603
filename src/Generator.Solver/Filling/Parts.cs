using Google.OrTools.Sat;

namespace Generator.Solver.Filling;

/// <summary>Which part of the fight a row stands in, for the rules that lay something over its length: an arc, acts.</summary>
internal static class Parts
{
    /// <summary>The part of a row, from 0.</summary>
    /// <param name="model">The rows.</param>
    /// <param name="slot">The row.</param>
    /// <param name="last">The last part.</param>
    /// <param name="partOf">Part of a move, from its moment in half counts and its number from 0.</param>
    /// <param name="name">Of the variables.</param>
    public static IntVar Of(MoveModel model, SlotVars slot, int last, Func<int, int, int> partOf, string name)
    {
        var cp = model.Cp;
        if (model.Scene.Brief.Length is { Counts: null })
        {
            return cp.Const(partOf(0, (model.Options.From?.Moves ?? 0) + slot.Index));
        }

        var part = cp.Int(0, last, $"{name}[{slot.Index}]");
        var begun = new List<LinearExpr> { LinearExpr.Constant(0) };
        for (var p = 1; p <= last; p++)
        {
            var begins = Enumerable.Range(0, model.Options.Horizon + 2).FirstOrDefault(t => partOf(t, 0) >= p, model.Options.Horizon + 1);
            begun.Add(cp.AtMost(LinearExpr.Constant(begins), slot.Start, $"{name}[{slot.Index},{p}]"));
        }

        cp.Model.Add(part == LinearExpr.Sum(begun));
        return part;
    }
}

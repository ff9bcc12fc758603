using Generator.Domain;
using Generator.Rules;
using Generator.Solver.Filling;
using Google.OrTools.Sat;

namespace Generator.Solver.Rules;

/// <summary>Places on the floor as the rules of space need them: edges, angles between bearings, and distances kept.</summary>
internal static class FloorParts
{
    /// <summary>True when a place is at most so many tens of centimetres from the mark, rounded to the nearest.</summary>
    public static BoolVar WithinTens(MoveModel model, IntVar place, int tens) => model.Cp.UpTo(place, (10L * tens) + 4);

    /// <summary>Posts steps by which the first place is bound from above (or from below) while all the literals hold.</summary>
    public static void Keep(MoveModel model, IReadOnlyList<FloorStep> steps, bool above, IntVar apart, IntVar other, IntVar first, params ILiteral[] when)
    {
        var cp = model.Cp;
        foreach (var step in steps)
        {
            var clause = new List<ILiteral>(when.Select(l => l.Not()))
            {
                cp.UpTo(apart, step.Apart).Not(),
                step.From == 0 ? cp.False : WithinTens(model, other, step.From - 1),
                step.To == int.MaxValue ? cp.False : WithinTens(model, other, step.To).Not(),
                above ? WithinTens(model, first, step.Limit) : WithinTens(model, first, step.Limit - 1).Not(),
            };
            if (!clause.Any(cp.IsTrue))
            {
                cp.Model.AddBoolOr(clause.Where(l => !cp.IsFalse(l)));
            }
        }
    }

    /// <summary>Farthest place on the floor on a bearing.</summary>
    public static IntVar Edge(MoveModel model, IntVar bearing, string name)
    {
        var edges = Enumerable.Range(0, Bearing.Circle).Select(b => (long)model.Scene.Floor[b]).ToArray();
        var edge = model.Cp.Int(edges.Min(), edges.Max(), name);
        model.Cp.Model.AddElement(bearing, edges, edge);
        return edge;
    }
}

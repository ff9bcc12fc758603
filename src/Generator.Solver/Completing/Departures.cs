using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Rules.Judging;

namespace Generator.Solver.Completing;

/// <summary>Tells what gave on the way to a whole filling.</summary>
internal static class Departures
{
    public static Completed Of(Sketch sketch, SketchStep[] steps, Beginning whole, Routine routine, Verdict verdict)
    {
        var gave = new List<Departure>();
        var rows = Enumerable.Repeat(-1, steps.Length).ToArray();
        foreach (var begun in whole.Path().Where(b => b.Before is not null))
        {
            var (before, row) = (begun.Before!, begun.Node.Depth - 1);
            if (begun.IsPutIn)
            {
                gave.Add(new Departure(begun.Next, SketchPart.Added, row));
            }
            else if (begun.Fills)
            {
                rows[before.Next] = row;
                gave.AddRange(steps[before.Next].Broken(before.Node, begun.Node.Row, before.HasOpened).Select(p => new Departure(before.Next, p, row)));
                if (begun.Shift != before.Shift && before.HasSaid)
                {
                    gave.Add(new Departure(before.Next, SketchPart.Count, row));
                }
            }
            else if (begun.Next > before.Next && !steps[before.Next].Move.IsGap)
            {
                gave.Add(new Departure(before.Next, steps[before.Next].WhenLeftOut, -1));
            }
        }

        return new Completed(sketch, routine, verdict, gave, rows);
    }
}

using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Solver.Reworking;
using MomentRule = Generator.Rules.Rules.Moments;

namespace Generator.Solver.Alternatives;

/// <summary>A routine cut at its hero moments, so that two of them can be compared before, between and after these.</summary>
public sealed class Shape
{
    private Shape(Routine routine, IReadOnlyList<(int Moment, int First)> order, IReadOnlyList<IReadOnlyList<Move>> parts)
    {
        (Routine, Order, Parts) = (routine, order, parts);
    }

    public Routine Routine { get; }

    /// <summary>The moments in the order in which they stand, and the first move of each from 0.</summary>
    public IReadOnlyList<(int Moment, int First)> Order { get; }

    /// <summary>The moves before, between and after the moments.</summary>
    public IReadOnlyList<IReadOnlyList<Move>> Parts { get; }

    /// <summary>Moves outside the moments.</summary>
    public int Free => Parts.Sum(p => p.Count);

    /// <summary>Cuts a routine at the moments that stand in it.</summary>
    public static Shape Of(Scene scene, Routine routine)
    {
        var steps = Replay.Of(scene, routine);
        var order = Enumerable.Range(0, scene.Brief.Moments.Count).Select(m => (Moment: m, First: MomentRule.Standing(scene, scene.Brief.Moments[m], steps).FirstOrDefault(-1)))
            .Where(m => m.First >= 0).OrderBy(m => m.First).ToList();
        var parts = new List<IReadOnlyList<Move>>();
        var from = 0;
        foreach (var (moment, first) in order)
        {
            parts.Add([.. routine.Moves.Skip(from).Take(Math.Max(0, first - from))]);
            from = Math.Max(from, first + scene.Brief.Moments[moment].Moves.Count);
        }

        parts.Add([.. routine.Moves.Skip(from)]);
        return new Shape(routine, order, parts);
    }

    /// <summary>
    /// Share of the free moves in which two routines differ, 0 to 100 percent: the fewest moves changed, put in or taken out, counted apart
    /// before, between and after the moments. Counts do not matter, so that a shift is no difference.
    /// </summary>
    public static int Difference(Shape one, Shape other)
    {
        var most = Math.Max(one.Free, other.Free);
        if (most == 0)
        {
            return 0;
        }

        var alike = one.Order.Select(o => o.Moment).SequenceEqual(other.Order.Select(o => o.Moment));
        var changed = alike
            ? one.Parts.Zip(other.Parts, Alignment.Fewest).Sum()
            : Alignment.Fewest([.. one.Parts.SelectMany(p => p)], [.. other.Parts.SelectMany(p => p)]);
        return Math.Min(100, 100 * changed / most);
    }
}

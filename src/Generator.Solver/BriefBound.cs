using Generator.Domain;
using Generator.Rules;

namespace Generator.Solver;

/// <summary>What arithmetic alone proves about the points: a hero moment heavier than the arc allows where it stands costs its excess.</summary>
internal static class BriefBound
{
    /// <summary>No routine of this brief has fewer points.</summary>
    public static int Of(Scene scene)
    {
        if (ArcShape.Of(scene.Brief) is not { } arc || scene.Brief.Length?.Counts is null)
        {
            return 0;
        }

        // One run of moves can fulfil several moments, so only the dearest of them is certain.
        return scene.Brief.Moments.Select(m => m.Moves.Select((move, i) => Excess(scene, arc, m, move, i)).Sum()).DefaultIfEmpty(0).Max();
    }

    private static int Excess(Scene scene, ArcShape arc, Moment moment, MomentMove move, int index)
    {
        var lightest = scene.Book.Techniques.Where(t => t.GoesBy(move.Technique)).Select(t => t.Weight).DefaultIfEmpty(0).Min();
        var first = arc.PhaseOf(moment.Earliest?.Value ?? 0, 0);
        var last = moment.Latest is { } latest && index == 0 ? arc.PhaseOf(latest.Value, 0) : arc.Caps.Count - 1;
        var cap = Enumerable.Range(first, Math.Max(1, last - first + 1)).Max(p => arc.Caps[p]);
        return Math.Max(0, lightest - cap);
    }
}

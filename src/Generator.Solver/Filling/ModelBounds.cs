using Generator.Rules;

namespace Generator.Solver.Filling;

/// <summary>Ranges of a model's times, wide enough that no routine within the horizon is cut off, however slow or far its attackers.</summary>
internal static class ModelBounds
{
    /// <summary>Latest moment at which anybody is ready again, or at which an opening ends, in half counts.</summary>
    public static int LatestReady(Scene scene, MoveModelOptions options)
    {
        var longest = 0;
        for (var r = 0; r < scene.Book.Reactions.Count; r++)
        {
            longest = Math.Max(longest, scene.OpenFor(r));
            for (var a = 0; a < scene.Cast; a++)
            {
                longest = Math.Max(longest, scene.ReadyAfter(r, a));
            }
        }

        var latest = options.Horizon + longest + scene.Brief.Pace.Linger.Value;
        for (var a = 0; a < scene.Cast; a++)
        {
            latest = Math.Max(latest, scene.Brief.Attackers[a].Entrance?.Value ?? 0);
            if (options.From is { } state)
            {
                latest = Math.Max(latest, Math.Max(state.Attackers[a].SetsOffAt, state.Attackers[a].OpenUntil) + (options.Delays?[a] ?? 0));
            }
        }

        return latest;
    }

    /// <summary>Half counts of the slowest walk to striking distance from anywhere that a model knows.</summary>
    public static int LongestWalk(Scene scene) => Enumerable.Range(0, scene.Cast).Select(a => scene.WalkTime(a, DistancePart.Farthest)).DefaultIfEmpty(0).Max();
}

using System.Numerics;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Rules.Sight;

namespace Generator.Solver.Cameras;

/// <summary>The fewest set-ups of the grid from which every non-contact hit reads that does not read from the cameras of the brief.</summary>
public static class CameraCover
{
    /// <summary>The plan; null when the search was stopped.</summary>
    /// <param name="scene">Brief and library.</param>
    /// <param name="steps">The routine.</param>
    /// <param name="gaps">By the number of a move, from 0: how far its planned miss really is off, in metres; what is not in it is taken to be as far off as is taught.</param>
    /// <param name="stop">Ends the search.</param>
    public static CameraPlan? Of(Scene scene, IReadOnlyList<Step> steps, IReadOnlyDictionary<int, double>? gaps = null, CancellationToken stop = default)
    {
        IReadOnlyList<Hit> hits = [.. Hit.Of(scene, steps).Select(h => gaps?.TryGetValue(h.Move - 1, out var gap) == true ? h with { Gap = Math.Max(0, gap) } : h)];
        var given = scene.Brief.Cameras;
        var open = hits.Where(h => !given.Any(c => Lens.Reads(Lens.Of(SetUp.Of(c), h)))).ToList();
        var choices = Choices(SetUpGrid.Of(scene.Brief.Floor), open);
        return SetCover.Of([.. choices.Select(c => c.Coverage)], stop) is { } chosen ? new CameraPlan(hits, given, [.. chosen.Select(c => choices[c].SetUp).OrderBy(s => s.Bearing.HalfHours)]) : null;
    }

    /// <summary>One set-up for each set of hits that can be covered at once: where most read clean, then the nearest, then the one at eye height, then the first of the clock.</summary>
    private static IReadOnlyList<(SetUp SetUp, Coverage Coverage)> Choices(IReadOnlyList<SetUp> grid, IReadOnlyList<Hit> hits) =>
    [
        .. grid.Select((s, i) => (SetUp: s, Coverage: CoverageOf(s, hits), Index: i))
            .Where(c => !c.Coverage.Covers.IsZero)
            .GroupBy(c => c.Coverage.Covers)
            .Select(g => g.OrderBy(c => c.Coverage.Dislike).ThenBy(c => c.Index).First())
            .OrderBy(c => c.Index)
            .Select(c => (c.SetUp, c.Coverage)),
    ];

    private static Coverage CoverageOf(SetUp setUp, IReadOnlyList<Hit> hits)
    {
        var (covers, close) = (BigInteger.Zero, 0);
        for (var h = 0; h < hits.Count; h++)
        {
            var reading = Lens.Of(setUp, hits[h]);
            covers |= Lens.Reads(reading) ? BigInteger.One << h : BigInteger.Zero;
            close += reading == Reading.Close ? 1 : 0;
        }

        return new Coverage(covers, (100 * close) + (setUp.Distance.Value / 50) + (setUp.Height.Value == 150 ? 0 : 1));
    }
}

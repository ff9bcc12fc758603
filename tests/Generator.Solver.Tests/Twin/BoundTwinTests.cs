using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;
using Xunit.Abstractions;

namespace Generator.Solver.Tests.Twin;

/// <summary>The bound on the points by which a draft is called the best there is, against every routine of tiny worlds.</summary>
public sealed class BoundTwinTests(ITestOutputHelper output)
{
    private static readonly Arc[] Arcs = [Arc.Rising, Arc.Even, Arc.TwoPeaks];

    [Fact]
    public void No_routine_has_fewer_points_than_the_bound()
    {
        var (compared, bounds, reached) = (0, 0, 0);
        for (var seed = 1; seed <= 240; seed++)
        {
            var world = new TinyWorld(seed);
            var clean = Exhaustive.Routines(world);
            foreach (var brief in Briefs(world, clean))
            {
                var scene = new Scene(brief, world.Book);
                var points = clean.Select(r => Audit.Of(scene, r with { Brief = brief })).Where(v => v.IsClean).Select(v => v.Points).ToList();
                if (points.Count == 0)
                {
                    continue;
                }

                var bound = BriefBound.Of(scene);
                Assert.True(bound <= points.Min(), $"seed {seed}: bound {bound}, but a routine has {points.Min()}");
                compared++;
                bounds += bound > 0 ? 1 : 0;
                reached += bound > 0 && bound == points.Min() ? 1 : 0;
            }
        }

        output.WriteLine($"{compared} briefs, {bounds} with a bound above 0, {reached} of them reached");
        Assert.True(compared >= 150 && bounds >= 20 && reached >= 3, $"{compared} briefs, {bounds} with a bound above 0, {reached} of them reached");
    }

    /// <summary>The brief of a world with an arc and, as hero moment, a move of one of its routines about where it stands there.</summary>
    private static IEnumerable<Brief> Briefs(TinyWorld world, IReadOnlyList<Routine> clean)
    {
        var dice = new Random(clean.Count);
        foreach (var arc in clean.Count == 0 ? [] : Arcs)
        {
            var routine = clean[dice.Next(clean.Count)];
            var move = routine.Moves[dice.Next(routine.Moves.Count)];
            var (before, after) = (dice.Next(4), dice.Next(6));
            yield return world.Brief with
            {
                Arc = arc,
                Judged = [],
                Length = new Length((routine.Moves[^1].Start.Value / HalfCounts.PerCount) + 2, null, 4),
                Moments = [new Moment([new MomentMove(move.Technique!, null, null, null)], new HalfCounts(Math.Max(0, move.Start.Value - before)), new HalfCounts(move.Start.Value + after))],
            };
        }
    }
}

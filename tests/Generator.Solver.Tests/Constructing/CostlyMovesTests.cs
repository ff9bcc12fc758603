using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Solver.Constructing;

namespace Generator.Solver.Tests.Constructing;

/// <summary>Which moves of a routine are worth trying something else for.</summary>
public sealed class CostlyMovesTests
{
    private const int Draws = 60;

    private static readonly int Arc = RuleBook.IndexOf("arc");

    [Fact]
    public void Points_of_moves_are_looked_for_at_those_moves()
    {
        var (routines, moves) = (0, 0);
        foreach (var (ground, finish) in MendingTests.Found().Where(f => f.Finish.Node.Score.Points == f.Finish.Points && f.Finish.Points > f.Ground.Least))
        {
            var path = finish.Node.Path();
            var drawn = Drawn(ground, finish, path).ToHashSet();
            Assert.All(drawn.Where(i => path[0].Score.Points == 0), i => Assert.True(path[i].Score.Points > path[i - 1].Score.Points, $"nothing was counted at move {i}"));
            routines++;
            moves += drawn.Count;
        }

        Assert.True(routines >= 8 && moves >= 10, $"{moves} moves of {routines} routines");
    }

    [Fact]
    public void Points_that_every_routine_has_are_left_alone()
    {
        var (needed, others) = (0, 0);
        foreach (var (ground, finish) in MendingTests.Found(Heavy, 8).Where(f => f.Finish.Points > f.Ground.Least).TakeWhile(_ => needed < 5 || others < 1))
        {
            var path = finish.Node.Path();
            Assert.Equal(1, ground.Least);
            if (finish.Node.Score.PointsByRule[Arc] > ground.Least)
            {
                Assert.Equal(0, ground.Needed(finish)(finish.Node));
                others++;
                continue;
            }

            Assert.Equal(1, ground.Needed(finish)(finish.Node));
            var heavy = path.FindIndex(1, n => n.Score.PointsByRule[Arc] > 0);
            var elsewhere = finish.Node.Score.Points - 1 > path[0].Score.Points && path[heavy].Score.Points == path[heavy - 1].Score.Points + 1;
            if (elsewhere && finish.Node.Score.Points == finish.Points)
            {
                Assert.DoesNotContain(heavy, Drawn(ground, finish, path));
                needed++;
            }
        }

        Assert.True(needed >= 3 && others >= 1, $"{needed} with a point that is needed, {others} with more");
    }

    [Fact]
    public void A_peak_that_the_arc_lacks_is_looked_for_where_it_should_be()
    {
        var (inPhase, draws) = (0, 0);
        foreach (var (ground, finish) in MendingTests.Found(TwoPeaks).Where(f => f.Finish.Node.Score.Points == 0 && f.Finish.Points > 0).TakeWhile(_ => draws < 4 * Draws))
        {
            var (path, arc) = (finish.Node.Path(), ground.Aims.Arc!);
            if (arc.Peaks.FirstOrDefault(phases => path[^1].PeakIn(phases) < ArcShape.PeakFrom) is not { } lacking)
            {
                continue;
            }

            foreach (var i in Drawn(ground, finish, path))
            {
                draws++;
                inPhase += lacking.Contains(arc.PhaseOf(path[i].Row.Start, i - 1)) ? 1 : 0;
            }
        }

        Assert.True(draws >= 2 * Draws && inPhase >= 0.7 * draws, $"{inPhase} of {draws} draws");
    }

    private static int[] Drawn(Ground ground, Finish finish, List<Node> path)
    {
        var costly = new CostlyMoves(ground, new Dice(3));
        return [.. Enumerable.Range(0, Draws).Select(_ => costly.Of(finish, path))];
    }

    /// <summary>A hip throw has weight 5, and an even arc allows 4; Wanda would have to walk far to be seen.</summary>
    private static Brief Heavy(int seed)
    {
        var brief = Drafts.Plain([.. new[] { ("hip-throw", "Bruno"), ("uppercut", "Wanda") }.Select(m => new Moment([new MomentMove(m.Item1, m.Item2, null, null)], null, null))]);
        return brief with
        {
            Arc = Domain.Arc.Even,
            Tempo = new Tempo(80 + seed),
            Attackers = [brief.Attackers[0], brief.Attackers[1] with { Bearing = new Bearing(12) }],
            Cameras = [new Camera("A", new Bearing(18), new Centimetres(600), new Centimetres(150))],
        };
    }

    private static Brief TwoPeaks(int seed) => Drafts.Small(seed) with { Arc = Domain.Arc.TwoPeaks, Length = new Length(24, null, 6) };
}

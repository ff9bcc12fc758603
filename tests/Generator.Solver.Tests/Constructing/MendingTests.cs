using Generator.Rules;
using Generator.Solver.Constructing;

namespace Generator.Solver.Tests.Constructing;

/// <summary>Windows of a routine in hand are searched anew with both ends fixed.</summary>
public class MendingTests
{
    private const int Seeds = 48;

    [Fact]
    public void The_rest_of_a_routine_joined_to_its_own_beginning_is_that_routine()
    {
        var joints = 0;
        foreach (var (ground, finish) in Rough())
        {
            var path = finish.Node.Path();
            var expander = new Expander(ground, new Dice(1));
            for (var i = 0; i < path.Count - 1; i++, joints++)
            {
                var tail = new Tail(ground.Aims, path, i);
                Assert.True(tail.Fits(path[i]));
                var joined = tail.Joined(expander, path[i], static _ => true);
                Assert.NotNull(joined);
                Assert.Equal(path.Select(n => n.Row), joined.Path().Select(n => n.Row));
                Assert.Equal(finish.Node.Score.Points, joined.Score.Points);
                Assert.Equal(finish.Node.Threats, joined.Threats);
            }
        }

        Assert.True(joints >= 100, $"{joints} joints");
    }

    [Fact]
    public void A_beginning_that_stands_otherwise_or_ends_much_later_does_not_fit()
    {
        var (ground, finish) = Rough().First();
        var path = finish.Node.Path();
        var tail = new Tail(ground.Aims, path, path.Count / 2);
        foreach (var other in path.Where(n => Math.Abs(n.State.Time - path[path.Count / 2].State.Time) > Tail.Slack || n.State.Stance != path[path.Count / 2].State.Stance))
        {
            Assert.False(tail.Fits(other));
        }
    }

    [Fact]
    public void Mended_routines_are_never_worse_and_often_better_and_the_audit_counts_the_same_points()
    {
        var (mended, better) = (0, 0);
        foreach (var (ground, finish) in Rough())
        {
            var after = new Mending(ground, new Dice(7), 10).Better(finish, 12, CancellationToken.None);
            Assert.True(after.Points <= finish.Points, $"{finish.Points} points before, {after.Points} after");
            Assert.Equal(after.Points, Draftsman.Write(ground.Scene, after).Verdict.Points);
            mended++;
            better += after.Points < finish.Points ? 1 : 0;
        }

        Assert.True(mended >= 8 && 3 * better >= mended, $"{better} of {mended} better");
    }

    [Fact]
    public void A_routine_that_cannot_be_bettered_is_left_alone()
    {
        var (ground, finish) = Found().First(f => f.Finish.Points == f.Ground.Least);
        Assert.Same(finish, new Mending(ground, new Dice(7), 10).Better(finish, 5, CancellationToken.None));
    }

    /// <summary>First routines of a narrow and noisy search that cost points.</summary>
    private static IEnumerable<(Ground Ground, Finish Finish)> Rough() => Found().Where(f => f.Finish.Points > f.Ground.Least);

    private static IEnumerable<(Ground Ground, Finish Finish)> Found()
    {
        for (var seed = 0; seed < Seeds; seed++)
        {
            var ground = new Ground(new Scene(DraftBrief.Complete(Drafts.Small(seed), Drafts.Book), Drafts.Book));
            var dice = new Dice(Dice.SeedOf(seed, 0, 0));
            using var ends = new CancellationTokenSource();
            Finish? first = null;
            if (Solver.Constructing.Staging.Choose(ground.Scene, dice) is { } placements)
            {
                new Beam(ground, dice, 3, 9, int.MaxValue).Run(
                    ground.Openings(placements),
                    f =>
                    {
                        first ??= f;
                        ends.Cancel();
                    },
                    ends.Token);
            }

            if (first is not null)
            {
                yield return (ground, first);
            }
        }
    }
}

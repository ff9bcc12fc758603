using Generator.Domain;
using Generator.Rules;
using Generator.Solver.Constructing;

namespace Generator.Solver.Tests.Constructing;

/// <summary>Windows of a routine in hand are searched anew with both ends fixed.</summary>
public class MendingTests
{
    private const int Seeds = 64;

    private static readonly Lazy<IReadOnlyList<(Ground Ground, Finish Finish)>> Small = new(() => [.. Found(seed => Drafts.Small(seed) with { Tempo = Tempo.Default }, seeds: 2 * Seeds)]);

    [Fact]
    public void The_rest_of_a_routine_joined_to_its_own_beginning_is_that_routine()
    {
        var joints = 0;
        foreach (var (ground, finish, path, expander) in Paths())
        {
            for (var i = 0; i < path.Count - 1; i++, joints++)
            {
                var tail = new Tail(ground.Aims, path, i, i);
                Assert.True(tail.Fits(expander, path[i], i));
                var joined = tail.Joined(expander, path[i], static _ => true, out _);
                Assert.NotNull(joined);
                Assert.Equal(path.Select(n => n.Row), joined.Path().Select(n => n.Row));
                Assert.Equal(finish.Node.Score.Points, joined.Score.Points);
                Assert.Equal(finish.Node.Threats, joined.Threats);
            }
        }

        Assert.True(joints >= 100, $"{joints} joints");
    }

    [Fact]
    public void The_rest_may_begin_after_any_of_some_moves()
    {
        var joints = 0;
        foreach (var (ground, _, path, expander) in Paths())
        {
            for (var i = 0; i + 4 < path.Count; i++)
            {
                var tail = new Tail(ground.Aims, path, i, i + 3);
                for (var j = i; j <= i + 3; j++, joints++)
                {
                    var joined = tail.Joined(expander, path[j], static _ => true, out _);
                    Assert.NotNull(joined);
                    var rest = joined.Path().Skip(j + 1).Select(n => n.Row.Technique).ToList();
                    Assert.Contains(Enumerable.Range(i, 4), after => path.Skip(after + 1).Select(n => n.Row.Technique).SequenceEqual(rest));
                }

                // Where these moves cost nothing there is nothing to gain either.
                if (path[i + 3].Score.Points == path[i].Score.Points)
                {
                    Assert.Null(new Tail(ground.Aims, path, i, i + 3, mustGain: true).Joined(expander, path[i], static _ => true, out var stuck));
                    Assert.Null(stuck);
                }
            }
        }

        Assert.True(joints >= 200, $"{joints} joints");
    }

    [Fact]
    public void Where_the_rest_follows_for_some_moves_only_it_tells_how_far()
    {
        var told = 0;

        // It is rare, so that more beginnings are looked at than elsewhere, until there are enough.
        var more = Found(seed => Drafts.Small(seed + 1000) with { Tempo = Tempo.Default }, seeds: 3 * Seeds);
        foreach (var (ground, _, path, expander) in Paths(Rough().Concat(more)).TakeWhile(_ => told < 8))
        {
            for (var i = 1; i < path.Count - 1; i++)
            {
                for (var by = 1; by <= Tail.Slack; by++)
                {
                    var later = expander.Fitted(path[i - 1], path[i].Row with { Start = path[i].Row.Start + by });
                    if (later is null || new Tail(ground.Aims, path, i, i).Joined(expander, later, static _ => true, out var stuck) is not null || stuck is null)
                    {
                        continue;
                    }

                    told++;
                    var followed = stuck.Path()[(i + 1)..];
                    Assert.NotEmpty(followed);
                    Assert.True(i + 1 + followed.Count < path.Count, "it followed to the end");
                    Assert.Equal(path.Skip(i + 1).Take(followed.Count).Select(n => (n.Row.Attacker, n.Row.Technique)), followed.Select(n => (n.Row.Attacker, n.Row.Technique)));
                    Assert.Contains(later, stuck.Path());
                }
            }
        }

        Assert.True(told >= 3, $"{told} told");
    }

    [Fact]
    public void A_beginning_that_ends_too_late_for_the_rest_does_not_fit()
    {
        var (ground, finish) = Rough().First();
        var path = finish.Node.Path();
        var (expander, joint) = (new Expander(ground, new Dice(1)), path.Count / 2);
        var tail = new Tail(ground.Aims, path, joint, joint);
        var late = path.Where(n => n.State.Time > path[joint + 1].Row.Start + Tail.Slack).ToList();
        Assert.NotEmpty(late);
        Assert.All(late, n => Assert.False(tail.Fits(expander, n, joint)));
    }

    [Fact]
    public void The_rest_of_a_routine_follows_a_beginning_that_ends_a_little_later_and_the_audit_agrees()
    {
        var (joints, regained) = (0, 0);
        foreach (var (ground, _, path, expander) in Paths())
        {
            for (var i = 2; i < path.Count - 1; i++)
            {
                var later = expander.Fitted(path[i - 1], path[i].Row with { Start = path[i].Row.Start + 1 });
                if (later is null || new Tail(ground.Aims, path, i, i) is var tail && !tail.Fits(expander, later, i) || tail.Joined(expander, later, static _ => true, out _) is not { } joined)
                {
                    continue;
                }

                joints++;
                var rows = joined.Path().Skip(1).Select(n => n.Row).ToList();
                Assert.Equal(path.Skip(1).Select(n => (n.Row.Attacker, n.Row.Attack, n.Row.Technique, n.Row.Reaction)), rows.Select(r => (r.Attacker, r.Attack, r.Technique, r.Reaction)));
                Assert.All(rows.Zip(path.Skip(1)), pair => Assert.InRange(pair.First.Start - pair.Second.Row.Start, 0, Tail.Slack + 1));
                regained += rows[^1].Start == path[^1].Row.Start ? 1 : 0;
                AssertAuditAgrees(ground, joined);
            }
        }

        Assert.True(joints >= 40 && regained >= 10, $"{joints} joints, {regained} in time again at the end");
    }

    [Fact]
    public void Whoever_a_window_has_moved_walks_back_for_the_rest_and_the_audit_agrees()
    {
        var back = 0;
        foreach (var (ground, _, path, expander) in Paths())
        {
            for (var i = 1; i < path.Count - 1; i++)
            {
                var row = path[i].Row;
                if (row.Attack < 0 || row.From >= 0 || path.FindIndex(i + 1, n => n.Row.Attacker == row.Attacker && n.Row.Attack >= 0 && n.Row.From < 0) is not (>= 0 and var next))
                {
                    continue;
                }

                var bearing = path[i - 1].State.Attackers[row.Attacker].Bearing;
                foreach (var by in new[] { -2, -1, 1, 2 })
                {
                    if (expander.Fitted(path[i - 1], row with { From = new Bearing(bearing + by).HalfHours }) is not { } moved
                        || new Tail(ground.Aims, path, i, i) is var tail && !tail.Fits(expander, moved, i)
                        || tail.Joined(expander, moved, static _ => true, out _) is not { } joined)
                    {
                        continue;
                    }

                    back += joined.Path()[next].Row.From == bearing ? 1 : 0;
                    AssertAuditAgrees(ground, joined);
                }
            }
        }

        Assert.True(back >= 10, $"{back} walked back");
    }

    [Fact]
    public void Mended_routines_are_never_worse_and_often_better_and_the_audit_counts_the_same_points()
    {
        var (mended, better) = (0, 0);
        foreach (var (ground, finish) in Rough())
        {
            var (mending, after) = (new Mending(ground, new Dice(7)), finish);
            for (var window = 0; window < 12 && after.Points > ground.Least; window++)
            {
                after = mending.GoOn(after, Effort.Unlimited, CancellationToken.None);
            }

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
        Assert.Same(finish, new PassLane(ground, 7, 0).Take(finish, static _ => { }, CancellationToken.None));
    }

    /// <summary>Where nothing forbids the routine, the audit counts the points of the search.</summary>
    private static void AssertAuditAgrees(Ground ground, Node joined)
    {
        var end = new Lingering(ground.Scene).ForEnd(joined, out var returns);
        var score = joined.Score.Close(ground.Scene, end);
        if (score.Forbidden == 0)
        {
            Assert.Equal(score.Points, Draftsman.Write(ground.Scene, new Finish(joined, returns, score.Points, score.Points)).Verdict.Points);
        }
    }

    /// <summary>First routines of a narrow and noisy search that cost points.</summary>
    private static IEnumerable<(Ground Ground, Finish Finish)> Rough() => Found().Where(f => f.Finish.Points > f.Ground.Least);

    /// <summary>The same with all their nodes and what makes children of them.</summary>
    private static IEnumerable<(Ground Ground, Finish Finish, List<Node> Path, Expander Expander)> Paths(IEnumerable<(Ground Ground, Finish Finish)>? of = null) =>
        (of ?? Rough()).Select(f => (f.Ground, f.Finish, f.Finish.Node.Path(), new Expander(f.Ground, new Dice(1))));

    /// <summary>First routines of such a search, looked for once for all tests.</summary>
    internal static IReadOnlyList<(Ground Ground, Finish Finish)> Found() => Small.Value;

    /// <summary>First routines of such a search of briefs made from seeds.</summary>
    internal static IEnumerable<(Ground Ground, Finish Finish)> Found(Func<int, Brief> briefs, int width = 3, int seeds = Seeds)
    {
        for (var seed = 0; seed < seeds; seed++)
        {
            var ground = new Ground(new Scene(DraftBrief.Complete(briefs(seed), Drafts.Book), Drafts.Book));
            var dice = new Dice(Dice.SeedOf(seed, 0, 0));
            using var ends = new CancellationTokenSource();
            Finish? first = null;
            if (OpeningPlaces.Choose(ground, dice) is { } placements)
            {
                new Beam(ground, dice, width, 9, int.MaxValue).Run(
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

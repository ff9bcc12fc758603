using FsCheck;
using FsCheck.Fluent;
using Generator.Domain;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;
using Generator.Rules.Tests.Fights;
using Walk = Generator.Rules.Replaying.Replay;

namespace Generator.Rules.Tests.Symmetry;

/// <summary>What an audit says does not depend on which side is called left, where 12 o'clock is, or what people are called.</summary>
public sealed class SymmetryTests
{
    private const int Fights = 200;

    [Fact]
    public void The_mirror_image_is_judged_the_same()
    {
        var seen = new Seen();
        Each(seed =>
        {
            var fight = RandomFight.Of(seed);
            var image = FightMirror.Of(fight);
            var scene = image.Scene;
            if (fight.Steps().Any(s => Ties.In(s, scene)))
            {
                return;
            }

            var findings = Judge(fight, default);
            seen.Add(findings);
            Assert.Equal(Facts(findings), Facts(Judge(image, default)));
        });
        seen.AssertMany(fights: Fights / 2, rules: 25);
    }

    [Fact]
    public void Turning_the_clock_changes_nothing()
    {
        var seen = new Seen();
        Each(seed =>
        {
            // The floor does not turn with the clock, so nobody comes in over its edge.
            var fight = RandomFight.Of(seed);
            fight = fight with { Placements = [.. fight.Placements.Select(p => p with { Entrance = HalfCounts.Zero })] };
            var by = new Turn(1 + (seed % 23));
            var turned = fight with
            {
                Brief = fight.Brief with { Cameras = [.. fight.Brief.Cameras.Select(c => c with { Bearing = c.Bearing + by })] },
                Placements = [.. fight.Placements.Select(p => p with { Bearing = p.Bearing + by })],
                Moves = [.. fight.Moves.Select(m => m with { From = m.From + by })],
            };
            var findings = Judge(fight, default);
            seen.Add(findings);
            Assert.Equal(Facts(findings), Facts(Judge(turned, default(Bearing) + by)));
        });
        seen.AssertMany(fights: Fights, rules: 25);
    }

    [Fact]
    public void Names_are_only_names()
    {
        var seen = new Seen();
        Each(seed =>
        {
            var fight = RandomFight.Of(seed);
            var renamed = fight with
            {
                Brief = fight.Brief with
                {
                    Hero = fight.Brief.Hero with { Name = Other(fight.Brief.Hero.Name) },
                    Attackers = [.. fight.Brief.Attackers.Select(a => a with { Name = Other(a.Name) })],
                    Ending = fight.Brief.Ending is { } e ? new Domain.Ending([.. e.Out.Select(Other)], e.Last is null ? null : Other(e.Last)) : null,
                },
            };
            var findings = Judge(fight, default);
            seen.Add(findings);
            Assert.Equal(
                findings.Select(f => f with { Who = Others(f.Who, fight), Message = Others(f.Message, fight), Advice = Others(f.Advice, fight) }),
                Judge(renamed, default));
        });
        seen.AssertMany(fights: Fights, rules: 25);
    }

    [Fact]
    public void Counting_alone_counts_the_same_as_telling()
    {
        var seen = new Seen();
        Each(seed =>
        {
            var fight = RandomFight.Of(seed);
            var scene = fight.Scene;
            var steps = fight.Steps();
            var score = steps.Aggregate(Score.Begin(scene, steps[0].Before), (s, step) => s.Observe(scene, step)).Close(scene, steps[^1].After);
            var verdict = fight.Audit();
            seen.Add(verdict.Findings);
            Assert.Equal((verdict.Points, verdict.Findings.Count(f => f.Severity >= Severity.Broken)), (score.Points, score.Forbidden));
            Assert.Equal(verdict.PointsByRule, score.PointsByRule);
            Assert.Equal(RuleBook.All.Select(r => verdict.Findings.Where(f => f.Rule == r.Id).Sum(f => f.Points)), score.PointsByRule);
        });
        seen.AssertMany(fights: Fights, rules: 25);
    }

    [Fact]
    public void A_search_is_refused_exactly_what_some_rule_forbids()
    {
        var (allowed, forbidden, atOnce) = (0, 0, 0);
        Each(seed =>
        {
            var fight = RandomFight.Of(seed);
            var (scene, steps) = (fight.Scene, fight.Steps());
            var score = Score.Begin(scene, steps[0].Before);
            for (var i = 0; i < steps.Count; i++)
            {
                var next = score.Observe(scene, steps[i]);
                var search = score.Allowed(scene, steps[i]);
                Assert.Equal(next.Forbidden == score.Forbidden, search is not null);
                Assert.Equal(search is null ? null : next.PointsByRule, search?.PointsByRule);
                var refused = score.Refuses(scene, steps[i].Before, Row.Of(fight.Moves[i], scene));
                Assert.True(!refused || search is null, "Refused at once, though nothing forbids it.");
                (allowed, forbidden, atOnce, score) = (allowed + (search is null ? 0 : 1), forbidden + (search is null ? 1 : 0), atOnce + (refused ? 1 : 0), next);
            }
        });
        Assert.True(allowed >= 100 && forbidden >= 100 && atOnce >= 20, $"{allowed} allowed, {forbidden} forbidden, {atOnce} of them at once");
    }

    private static void Each(Action<int> judge) =>
        Check.One(Config.QuickThrowOnFailure.WithMaxTest(Fights).WithReplay(19, 97), Prop.ForAll(Gen.Choose(0, 1_000_000).ToArbitrary(), judge));

    private static List<Finding> Judge(Fight fight, Bearing facing)
    {
        var scene = fight.Scene;
        var words = new List<Finding>();
        var steps = Walk.Of(scene, fight.Routine, facing);
        var score = Score.Begin(scene, steps[0].Before, words);
        foreach (var step in steps)
        {
            score = score.Observe(scene, step, words);
        }

        score.Close(scene, steps[^1].After, words);
        return words;
    }

    /// <summary>What was found, without the words, in which left and right and clock positions occur.</summary>
    private static IEnumerable<string> Facts(IEnumerable<Finding> findings) =>
        findings.Select(f => $"{f.Rule} {f.Severity} {f.Move} {f.Count} {f.Who} {f.Measured} {f.Allowed} {f.Unit} {f.Points}");

    private static string Other(string name) => "<" + new string([.. name.Reverse()]) + ">";

    private static string Others(string text, Fight fight) =>
        fight.Brief.Attackers.Select(a => a.Name).Append(fight.Brief.Hero.Name).Aggregate(text, (t, name) => t.Replace(name, Other(name), StringComparison.Ordinal));
}

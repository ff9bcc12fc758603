using Generator.Domain;
using Generator.Rules.Judging;
using Generator.Rules.Shapes;
using Generator.Rules.Tests.Fights;
using Generator.Rules.Tests.Symmetry;

namespace Generator.Rules.Tests.Rules;

/// <summary>The rules of a good fight and the shape sheet measure the same things.</summary>
public sealed class FightRulesTests
{
    private const int Fights = 300;

    /// <summary>After <see cref="Fights"/> it goes on, up to here, until enough is seen of what is rare: which fights are drawn hangs on every record of the library.</summary>
    private const int MostFights = 1200;

    [Fact]
    public void Points_are_those_of_the_figures()
    {
        var judged = new Dictionary<string, int>(StringComparer.Ordinal);
        var worn = 0;
        for (var seed = 1; seed <= Fights || (worn <= 10 && seed <= MostFights); seed++)
        {
            string?[] manners = [null, "brawler", "kicker", "boxer"];
            var fight = RandomFight.Of(seed, more: seed % 4 == 0 ? 30 : 0).With(b => b with
            {
                Hero = b.Hero with { Manner = manners[seed % 4] },
                Attackers = [.. b.Attackers.Select((a, i) => a with { Manner = manners[(seed + i) % 4] })],
                Avoid = seed % 3 == 0 ? ["punch", "lock"] : [],
                Signature = seed % 4 == 0 ? "swing" : null,
                Favour = seed % 2 == 0 ? ["kick", "hip-throw"] : [],
                Acts = [new(30 + (seed % 30), (HeroStanding)(seed % 3)), new(70 - (seed % 30), (HeroStanding)(seed / 3 % 3), seed % 5 == 0 ? 1 : null)],
                Length = new Domain.Length(null, 9, 6),
            });
            var (points, shape) = (fight.Audit().PointsByRule, FightShape.Of(fight.Scene, fight.Routine));
            if (shape.Steps.Any(s => s.Over > shape.Steps[^1].End || s.Gap < 0))
            {
                // Out of order: the fold knows the end of the last move, the shape that of the longest.
                continue;
            }

            var off = Figures.Of(shape).ToDictionary(f => f.Id, f => f.Off, StringComparer.Ordinal);
            var felt = shape.Setbacks.Select((s, i) => Math.Max(0, (i < 2 ? 4 : 6) - s.Cost) + (s.Otherwise ? 0 : 1)).Sum();
            Equal("story", (2 * off["out-of-act"]) + felt);
            Equal("climax", off["last-short"] + off["last-fight"] + off["run-offs"]);
            if (shape.Contacts.Zip(shape.Contacts.Skip(1)).All(p => p.First.Move < p.Second.Move || (p.First.Move == p.Second.Move && !p.First.ByHero)))
            {
                // The fold takes contacts as the moves come.
                Equal("rhythm", off["equal-lengths"] + (2 * off["long-exchanges"]) + off["flurries"]);
            }

            Equal("thinning", ((off["first-out"] + 9) / 10) + off["lacking-moves"] + off["blows"] + off["worn-rest"] + off["worn-light"]);
            worn += off["worn-rest"] + off["worn-light"];
            Equal("manner", off["out-of-manner"] + (3 * off["avoided"]) + (2 * off["missing"]) + (2 * off["combinations"]));
            Equal("momentum", off["same-limb"] + off["wound-up"]);
            Equal("echo", (2 * off["beaten-later"]) + (fight.Brief.Signature is null ? 0 : EchoOf(off, shape)));
            Equal("purpose", (2 * off["idle-holds"]) + off["punch-bags"] + off["unseen"]);

            void Equal(string rule, int figures)
            {
                Assert.True(points[RuleBook.IndexOf(rule)] == figures, $"{rule}, seed {seed}: {points[RuleBook.IndexOf(rule)]} points, {figures} by the figures");
                judged[rule] = judged.GetValueOrDefault(rule) + (figures > 0 ? 1 : 0);
            }
        }

        static int EchoOf(Dictionary<string, int> off, FightShape shape) =>
            off["signature-alike"] + (off["signature"] * (shape.Steps.Count(s => s.Attack?.BaseId == "swing" && s.Technique is not null) < 2 ? 2 : 1));

        Assert.True(worn > 10, $"only {worn} attacks of somebody worn in {MostFights} fights");
        Assert.All(judged, r => Assert.True(r.Value > 10, $"only {r.Value} fights with points of {r.Key}"));
    }
}

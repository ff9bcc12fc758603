using Generator.Domain;
using Generator.Rules.Judging;
using Generator.Rules.Shapes;
using Generator.Rules.Tests.Fights;
using Generator.Rules.Tests.Symmetry;

namespace Generator.Rules.Tests.Rules;

/// <summary>The rules of a good fight and the shape sheet measure the same things.</summary>
public sealed class FightRulesTests
{
    [Fact]
    public void Points_are_those_of_the_figures()
    {
        var judged = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var seed = 1; seed <= 600; seed++)
        {
            var fight = RandomFight.Of(seed).With(b => b with { Acts = [new(30 + (seed % 30), (HeroStanding)(seed % 3)), new(70 - (seed % 30), (HeroStanding)(seed / 3 % 3), seed % 5 == 0 ? 1 : null)], Length = new Domain.Length(null, 9, 6) });
            var (points, shape) = (fight.Audit().PointsByRule, FightShape.Of(fight.Scene, fight.Routine));
            if (shape.Steps.Any(s => s.Over > shape.Steps[^1].End))
            {
                // Out of order: the fold knows the end of the last move, the shape that of the longest.
                continue;
            }

            var off = Figures.Of(shape).ToDictionary(f => f.Id, f => f.Off, StringComparer.Ordinal);
            var felt = shape.Setbacks.Sum(s => Math.Max(0, Setback.Felt - s.Cost) + (s.Otherwise ? 0 : 1));
            Equal("story", (2 * off["out-of-act"]) + felt);
            Equal("climax", off["last-short"] + off["last-fight"] + off["run-offs"]);
            Equal("purpose", (2 * off["idle-holds"]) + off["punch-bags"] + off["unseen"]);

            void Equal(string rule, int figures)
            {
                Assert.True(points[RuleBook.IndexOf(rule)] == figures, $"{rule}, seed {seed}: {points[RuleBook.IndexOf(rule)]} points, {figures} by the figures");
                judged[rule] = judged.GetValueOrDefault(rule) + (figures > 0 ? 1 : 0);
            }
        }

        Assert.All(judged, r => Assert.True(r.Value > 30, $"{r.Value} with points of {r.Key}"));
    }
}

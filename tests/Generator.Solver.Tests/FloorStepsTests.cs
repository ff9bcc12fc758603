using Generator.Rules;
using Generator.Solver.Rules;

namespace Generator.Solver.Tests;

/// <summary>The few steps forbid exactly what the distances between two places on the floor forbid, place by place.</summary>
public class FloorStepsTests
{
    [Theory]
    [InlineData(60)]
    [InlineData(80)]
    [InlineData(100)]
    public void Landings_forbid_what_passes_too_close(int clearance)
    {
        var counts = Compare(
            (apart, other, landing) => FloorGeometry.LaneDistance(apart, other * 10, landing * 10) < clearance,
            (apart, other, landing) => !Holds(FloorSteps.Landings(clearance), true, apart, other, landing));
        Assert.True(counts.Forbidden > 1000 && counts.Free > 1000, $"{counts}");
    }

    [Theory]
    [InlineData(50)]
    [InlineData(100)]
    [InlineData(130)]
    public void Inside_or_outside_forbid_what_stands_too_close(int spacing)
    {
        var counts = Compare(
            (apart, other, first) => FloorGeometry.Apart(apart, first * 10, other * 10) < spacing,
            (apart, other, first) => !Holds(FloorSteps.Inside(spacing), true, apart, other, first) && !Holds(FloorSteps.Outside(spacing), false, apart, other, first));
        Assert.True(counts.Forbidden > 300 && counts.Free > 1000, $"{counts}");
    }

    private static bool Holds(IReadOnlyList<FloorStep> steps, bool above, int apart, int other, int first) =>
        steps.All(s => apart > s.Apart || other < s.From || other > s.To || (above ? first <= s.Limit : first >= s.Limit));

    private static (int Forbidden, int Free) Compare(Func<int, int, int, bool> naive, Func<int, int, int, bool> bySteps)
    {
        var (forbidden, free) = (0, 0);
        for (var apart = 0; apart <= 12; apart++)
        {
            for (var other = 0; other <= FloorSteps.Reach; other++)
            {
                for (var first = 0; first <= FloorSteps.Reach; first++)
                {
                    var wrong = naive(apart, other, first);
                    Assert.True(wrong == bySteps(apart, other, first), $"{apart} half hours, other at {other}0 cm, first at {first}0 cm");
                    _ = wrong ? forbidden++ : free++;
                }
            }
        }

        return (forbidden, free);
    }
}

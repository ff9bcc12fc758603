using Generator.Rules;
using Generator.Solver.Rules;

namespace Generator.Solver.Tests;

/// <summary>The few steps forbid nothing that the distance allows, and all but the rim of what it forbids, place by place.</summary>
public class FloorStepsTests
{
    [Theory]
    [InlineData(50)]
    [InlineData(100)]
    [InlineData(130)]
    public void Inside_or_outside_forbid_who_stands_too_close(int spacing)
    {
        var (forbidden, rim, free) = (0, 0, 0);
        for (var apart = 0; apart <= 12; apart++)
        {
            for (var other = 0; other <= 10 * FloorSteps.Reach; other += 7)
            {
                for (var first = 0; first <= 10 * FloorSteps.Reach; first += 3)
                {
                    var distance = FloorGeometry.Apart(apart, first, other);
                    var wrong = !Holds(FloorSteps.Inside(spacing), true, apart, other, first) && !Holds(FloorSteps.Outside(spacing), false, apart, other, first);
                    Assert.True(!wrong || distance < spacing, $"{apart} half hours, {other} and {first} cm: {distance} cm is enough");
                    Assert.True(wrong || distance >= spacing - 20 || other > (10 * FloorSteps.Reach) - 6, $"{apart} half hours, {other} and {first} cm: {distance} cm is far too close");
                    (forbidden, rim, free) = (forbidden + (wrong ? 1 : 0), rim + (!wrong && distance < spacing ? 1 : 0), free + (distance >= spacing ? 1 : 0));
                }
            }
        }

        Assert.True(forbidden > 1000 && rim < forbidden && free > 10000, $"{forbidden} forbidden, {rim} at the rim, {free} free");
    }

    private static bool Holds(IReadOnlyList<FloorStep> steps, bool above, int apart, int other, int first) =>
        steps.All(s => apart > s.Apart || Tens(other) < s.From || Tens(other) > s.To || (above ? Tens(first) <= s.Limit : Tens(first) >= s.Limit));

    private static int Tens(int place) => (place + 5) / 10;
}

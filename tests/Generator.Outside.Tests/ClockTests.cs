using Generator.Domain;
using Generator.Rules;

namespace Generator.Outside.Tests;

/// <summary>The clock and the floor against plane geometry.</summary>
public sealed class ClockTests
{
    [Fact(DisplayName = "Geometry: an hour is 30 degrees clockwise from above, a half hour 15; 12 and 0 are one bearing")]
    public void Hours_are_thirty_degrees()
    {
        for (var hour = 0; hour <= 12; hour++)
        {
            Assert.True(Bearing.TryParse($"{hour}", out var full));
            Assert.Equal(30 * (hour % 12), full.Degrees);
            Assert.True(Bearing.TryParse($"{hour}:30", out var half));
            Assert.Equal((30 * (hour % 12)) + 15, half.Degrees);
        }

        Assert.Equal(new Bearing(0), new Bearing(24));
    }

    [Theory(DisplayName = "Geometry: two people k hours apart at r = 2 m stand 2 r sin(15 k degrees) apart")]
    [InlineData(1, 1035)]
    [InlineData(2, 2000)]
    [InlineData(3, 2828)]
    [InlineData(4, 3464)]
    [InlineData(6, 4000)]
    public void Chords_at_two_metres(int hours, int millimetres)
    {
        Assert.InRange(FloorGeometry.Apart(hours * 2, 200, 200) * 10, millimetres - 5, millimetres + 5);
        Assert.Equal(millimetres / 1000.0, 2 * 2 * Math.Sin(15 * hours * Math.PI / 180), 3);
    }

    [Fact(DisplayName = "Geometry: neighbouring hours at 1 m are 0.518 m apart, too near for the spacing that the library asks for")]
    public void Neighbouring_hours_at_one_metre_are_too_near()
    {
        Assert.Equal(52, FloorGeometry.Apart(2, 100, 100));
        Assert.True(FloorGeometry.Apart(2, 100, 100) < Outside.Book.Settle.Spacing.Value);
    }

    [Fact(DisplayName = "Geometry: the law of cosines holds for every pair of marks, within the 10 cm to which marks are rounded")]
    public void Distances_obey_the_law_of_cosines()
    {
        for (var delta = 0; delta <= 24; delta++)
        {
            for (var first = 60; first <= 600; first += 37)
            {
                for (var second = 60; second <= 600; second += 41)
                {
                    var exact = Math.Sqrt((first * first) + (second * second) - (2.0 * first * second * Math.Cos(delta * 15 * Math.PI / 180)));
                    Assert.InRange(FloorGeometry.Apart(delta, first, second), exact - 11, exact + 11);
                }
            }
        }
    }

    [Fact(DisplayName = "Seen from above with 12 up, 3 o'clock lies at the right (x grows), so the stage is not mirrored")]
    public void Three_o_clock_lies_towards_larger_x()
    {
        // Mark 2 m from the left wall of a floor 10 m wide and 2 m from the wall at 6 o'clock of a floor 9 m deep.
        var floor = new FloorPlan { Width = new Centimetres(1000), Depth = new Centimetres(900), MarkX = new Centimetres(200), MarkY = new Centimetres(200) };
        var reach = new FloorReach(floor, new Settle { EdgeClearance = new Centimetres(0) });

        Assert.Equal([700, 800, 200, 200], new[] { 0, 6, 12, 18 }.Select(b => reach[b]));

        // 1 o'clock: the wall at 12 is met after 7 m / cos 30; 2 o'clock: the right wall after 8 m / sin 60 = 9.24, the far wall after 14.
        Assert.InRange(reach[2], 808, 809);
        Assert.InRange(reach[4], 923, 924);
    }

    [Fact(DisplayName = "Definition: 8 counts at 120 a minute last 4.000 s")]
    public void Eight_counts_at_120() => Assert.Equal(4.000m, new Tempo(120).SecondsIn(HalfCounts.FromCounts(8)));

    [Theory(DisplayName = "Definition: rehearsing at 1/4, 1/2 and 3/4 of the tempo takes 4, 2 and 4/3 times as long, exactly")]
    [InlineData(160, 40, 4, 1)]
    [InlineData(160, 80, 2, 1)]
    [InlineData(160, 120, 4, 3)]
    public void Slower_tempi_scale_exactly(int full, int slow, int times, int over)
    {
        for (var span = 1; span <= 400; span++)
        {
            Assert.Equal(new Tempo(full).SecondsIn(new HalfCounts(span)) * times, new Tempo(slow).SecondsIn(new HalfCounts(span)) * over, 20);
        }
    }

    [Fact(DisplayName = "Definition: seconds become half counts without ever losing time, at every tempo")]
    public void Seconds_round_up()
    {
        for (var counts = Tempo.Slowest; counts <= Tempo.Fastest; counts++)
        {
            var tempo = new Tempo(counts);
            foreach (var seconds in new[] { 0.05m, 0.45m, 1.64m, 3.3m, 7.17m })
            {
                var span = tempo.AtLeast(seconds);
                Assert.True(tempo.SecondsIn(span) >= seconds);
                Assert.True(tempo.SecondsIn(span - new HalfCounts(1)) < seconds);
            }
        }
    }
}

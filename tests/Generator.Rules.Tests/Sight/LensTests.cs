using Generator.Domain;
using Generator.Rules.Sight;

namespace Generator.Rules.Tests.Sight;

public class LensTests
{
    private static readonly Hit Straight = new()
    {
        Move = 1,
        Start = 0,
        Attacker = 0,
        Name = "Jab right",
        Sells = Sells.Along,
        Bearing = 0,
        Distance = 100,
        Height = 165,
    };

    [Theory]
    [InlineData(0, 600, 165, Reading.Clean)]
    [InlineData(12, 600, 165, Reading.Clean)]
    [InlineData(1, 600, 165, Reading.Close)]
    [InlineData(1, 200, 165, Reading.Open)]
    [InlineData(2, 600, 165, Reading.Open)]
    [InlineData(6, 600, 165, Reading.Open)]
    [InlineData(0, 300, 165, Reading.TooNear)]
    [InlineData(0, 600, 465, Reading.Open)]
    [InlineData(0, 600, 300, Reading.Clean)]
    public void A_straight_miss(int bearing, int distance, int height, Reading reading) => Assert.Equal(reading, Lens.Of(Place(bearing, distance, height), Straight));

    /// <summary>The lens is 17.9 degrees off the line: asin(77 / 150) is 31, asin(77 / 252) 17.8 and asin(121 / 252) 28.7, asin(121 / 500) 14.</summary>
    [Theory]
    [InlineData(0.05, Reading.Clean)]
    [InlineData(MissGeometry.Gap, Reading.Close)]
    [InlineData(0.40, Reading.Open)]
    public void The_farther_off_a_straight_miss_is_the_nearer_to_its_line_it_must_be_seen(double gap, Reading reading) =>
        Assert.Equal(reading, Lens.Of(Place(1, 600, 165), Straight with { Gap = gap }));

    [Theory]
    [InlineData(0, 165, Reading.Clean)]
    [InlineData(4, 165, Reading.Open)]
    [InlineData(3, 165, Reading.Clean)]
    [InlineData(6, 165, Reading.Open)]
    public void A_swung_miss(int bearing, int height, Reading reading) =>
        Assert.Equal(reading, Lens.Of(Place(bearing, 600, height), Straight with { Sells = Sells.Across }));

    [Theory]
    [InlineData(0, 300, 180, Reading.Hidden)]
    [InlineData(1, 300, 180, Reading.Clean)]
    [InlineData(12, 300, 180, Reading.Clean)]
    [InlineData(0, 700, 180, Reading.Clean)]
    [InlineData(0, 300, 140, Reading.Clean)]
    public void Somebody_in_the_way_hides_it(int bearing, int distance, int height, Reading reading) =>
        Assert.Equal(reading, Lens.Of(Place(0, 600, 165), Straight with { Others = [new Bystander(1, bearing, distance, height)] }));

    /// <summary>A block a metre broad across the line of sight, 3 to 3.4 m out towards 12 o'clock; the lens is 6 m out.</summary>
    [Theory]
    [InlineData(-0.5, 2.4, 165, Reading.Hidden)]
    [InlineData(-0.5, 1.0, 165, Reading.Clean)]
    [InlineData(0.2, 2.4, 165, Reading.Clean)]
    [InlineData(-0.5, 1.8, 400, Reading.Clean)]
    public void So_does_something_high(double left, double high, int lens, Reading reading) =>
        Assert.Equal(reading, Lens.Of(Place(0, 600, lens), Straight with { Sells = Sells.Any, Screens = [new Screen(left, left + 1, 3, 3.4, high)] }));

    [Fact]
    public void Something_behind_the_lens_or_behind_the_face_hides_nothing()
    {
        Screen[] walls = [new(-2, 2, 6.5, 7, 3), new(-2, 2, -1, -0.5, 3)];
        Assert.Equal(Reading.Clean, Lens.Of(Place(0, 600, 165), Straight with { Screens = walls }));
    }

    [Fact]
    public void A_hit_that_sells_from_everywhere_still_can_be_hidden()
    {
        var any = Straight with { Sells = Sells.Any };
        Assert.All(Enumerable.Range(0, 24), b => Assert.Equal(Reading.Clean, Lens.Of(Place(b, 200, 100), any)));
        Assert.Equal(Reading.Hidden, Lens.Of(Place(0, 600, 165), any with { Others = [new Bystander(1, 0, 300, 180)] }));
    }

    private static SetUp Place(int bearing, int distance, int height) => new(new Bearing(bearing), new Centimetres(distance), new Centimetres(height));
}

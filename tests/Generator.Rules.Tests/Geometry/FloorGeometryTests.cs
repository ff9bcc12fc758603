using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;

namespace Generator.Rules.Tests.Geometry;

public sealed class FloorGeometryTests
{
    [Theory]
    [InlineData(0, 0)]
    [InlineData(4, 0)]
    [InlineData(5, 10)]
    [InlineData(97, 100)]
    [InlineData(104, 100)]
    public void Distances_round_to_ten(int distance, int expected) => Assert.Equal(expected, FloorGeometry.Round10(distance));

    /// <summary>Straight across, a right angle with legs 3 and 4, an equilateral triangle, and a chord of 2 r sin 7.5°.</summary>
    [Theory]
    [InlineData(0, 300, 100, 200)]
    [InlineData(12, 300, 100, 400)]
    [InlineData(6, 300, 400, 500)]
    [InlineData(18, 300, 400, 500)]
    [InlineData(4, 200, 200, 200)]
    [InlineData(1, 300, 300, 78)]
    public void People_stand_apart_as_plane_geometry_says(int delta, int first, int second, int expected) => Assert.Equal(expected, FloorGeometry.Apart(delta, first, second));

    [Theory]
    [InlineData(0, 120, 200, 0)]
    [InlineData(0, 250, 200, 50)]
    [InlineData(6, 120, 200, 134)]
    [InlineData(12, 120, 200, 180)]
    [InlineData(2, 150, 200, 75)]
    [InlineData(0, 120, 20, 60)]
    [InlineData(6, 80, 40, 100)]
    public void The_way_starts_at_sixty_and_ends_at_the_landing_or_there(int delta, int other, int landing, int expected) => Assert.Equal(expected, FloorGeometry.LaneDistance(delta, other, landing));

    /// <summary>The way measured point by point, from outside.</summary>
    [Property(MaxTest = 300)]
    public Property The_way_is_as_far_as_its_nearest_point() => Prop.ForAll(
        Gen.Choose(0, 24).ToArbitrary(),
        Gen.Choose(0, 800).ToArbitrary(),
        Gen.Choose(0, 800).ToArbitrary(),
        (delta, other, landing) =>
        {
            var (stands, end) = ((other + 5) / 10 * 10, (landing + 5) / 10 * 10);
            var angle = delta * Math.PI / 12;
            var (x, y) = (stands * Math.Cos(angle), stands * Math.Sin(angle));
            var nearest = Enumerable.Range(0, (Math.Max(0, end - 60) * 10) + 1).Min(i => Math.Sqrt(Math.Pow(x - (60 + (i / 10.0)), 2) + (y * y)));
            return Math.Abs(FloorGeometry.LaneDistance(delta, other, landing) - nearest) <= 0.51;
        });
}

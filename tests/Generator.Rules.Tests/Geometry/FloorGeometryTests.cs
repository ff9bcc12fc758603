using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Generator.Rules.Bodies;

namespace Generator.Rules.Tests.Geometry;

public sealed class FloorGeometryTests
{
    /// <summary>Straight across, a right angle with legs 3 and 4, an equilateral triangle, a chord of 2 r sin 7.5°, and whole centimetres as they are.</summary>
    [Theory]
    [InlineData(0, 300, 100, 200)]
    [InlineData(12, 300, 100, 400)]
    [InlineData(6, 300, 400, 500)]
    [InlineData(18, 300, 400, 500)]
    [InlineData(4, 200, 200, 200)]
    [InlineData(1, 300, 300, 78)]
    [InlineData(0, 194, 95, 99)]
    public void People_stand_apart_as_plane_geometry_says(int delta, int first, int second, int expected) => Assert.Equal(expected, FloorGeometry.Apart(delta, first, second));

    [Theory]
    [InlineData(0, 0, 100)]
    [InlineData(6, 100, 0)]
    [InlineData(12, 0, -100)]
    [InlineData(-6, -100, 0)]
    [InlineData(2, 50, 86.60254)]
    public void Three_o_clock_lies_to_the_right(int bearing, double x, double y)
    {
        var place = Place.At(bearing, 100);
        Assert.Equal(x, place.X, 5);
        Assert.Equal(y, place.Y, 5);
    }

    /// <summary>Two who go straight ahead at the same time, looked at in a thousand moments.</summary>
    [Property(MaxTest = 300)]
    public Property Two_who_move_come_as_near_as_at_their_nearest_moment() => Prop.ForAll(Legs(upright: true), Legs(upright: true), (one, two) =>
    {
        var (from, to) = (Math.Max(one.From, two.From), Math.Min(one.To, two.To));
        if (from >= to)
        {
            return double.IsPositiveInfinity(one.Apart(two));
        }

        var nearest = Enumerable.Range(0, 1001).Min(i => one.At(from + ((to - from) * i / 1000)).To(two.At(from + ((to - from) * i / 1000))));
        return one.Apart(two) <= nearest + 1e-6 && one.Apart(two) >= nearest - 2 && Math.Abs(one.Apart(two) - two.Apart(one)) < 1e-6;
    });

    /// <summary>One who lies, and one who passes: the whole way meanwhile against the whole body.</summary>
    [Property(MaxTest = 300)]
    public Property Who_passes_a_body_comes_as_near_as_at_the_nearest_points() => Prop.ForAll(Legs(upright: true), Legs(upright: false), (goes, lies) =>
    {
        var (from, to) = (Math.Max(goes.From, lies.From), Math.Min(goes.To, lies.To));
        if (from >= to)
        {
            return double.IsPositiveInfinity(goes.Apart(lies));
        }

        var nearest = Enumerable.Range(0, 101).Min(i => Enumerable.Range(0, 101).Min(k => goes.At(from + ((to - from) * i / 100)).To(lies.Start.Towards(lies.End, k / 100.0))));
        return goes.Apart(lies) <= nearest + 1e-6 && goes.Apart(lies) >= nearest - 8;
    });

    private static Arbitrary<Leg> Legs(bool upright) => (
        from x in Gen.Choose(-300, 300)
        from y in Gen.Choose(-300, 300)
        from toX in Gen.Choose(-300, 300)
        from toY in Gen.Choose(-300, 300)
        from start in Gen.Choose(0, 10)
        from length in Gen.Choose(1, 10)
        select new Leg(upright ? LegKind.Comes : LegKind.Lies, 0, start, start + length, new Place(x, y), new Place(toX, toY), null)).ToArbitrary();
}

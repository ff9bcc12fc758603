using Generator.Domain;
using Generator.Rules.Rules;
using Generator.Rules.Sight;

namespace Generator.Outside.Tests;

/// <summary>Sight lines against plane geometry, with head and fist as measured in ANSUR II (2012).</summary>
public class CameraTests
{
    [Theory(DisplayName = "Geometry: a miss by 6, 8 and 12 inches reads clean within 17.8, 14.7 and 11.0 degrees, and outlines touch within 28.6, 23.5 and 17.4")]
    [InlineData(0.1524, 17.8, 28.6)]
    [InlineData(0.2032, 14.7, 23.5)]
    [InlineData(0.3048, 11.0, 17.4)]
    public void Cones(double gap, double clean, double touches)
    {
        Assert.Equal(clean, MissGeometry.CleanWithin(gap), 0.1);
        Assert.Equal(touches, MissGeometry.TouchesWithin(gap), 0.1);
        Assert.Equal(MissGeometry.HeadHalfBreadth, MissGeometry.Offset(gap, MissGeometry.CleanWithin(gap)), 1e-9);
    }

    [Fact(DisplayName = "Geometry: a bigger gap narrows the cone, and seen from the side nothing over 2.1 cm is hidden")]
    public void Wider_gap_narrower_cone()
    {
        for (var gap = 0.03; gap < 0.5; gap += 0.01)
        {
            Assert.True(MissGeometry.CleanWithin(gap + 0.01) < MissGeometry.CleanWithin(gap));
            Assert.True(MissGeometry.TouchesWithin(gap) >= MissGeometry.CleanWithin(gap));
        }

        Assert.Equal(90, MissGeometry.TouchesWithin(0.0209));
        Assert.True(MissGeometry.TouchesWithin(0.0211) < 90);
    }

    [Theory(DisplayName = "Pinhole camera: about five per cent bigger at 4.1 m for 8 inches and 3.0 m for 6 inches")]
    [InlineData(0.2032, 4.1)]
    [InlineData(0.1524, 3.0)]
    public void Scale_at_the_nearest_lens(double gap, double distance)
    {
        Assert.Equal(distance, MissGeometry.NearestLens(gap), 0.05);
        Assert.Equal(1.05, MissGeometry.Scale(gap, MissGeometry.NearestLens(gap)), 0.003);
    }

    [Fact(DisplayName = "Pinhole camera: further back always sells better")]
    public void Further_is_better()
    {
        for (var distance = 1.0; distance < 20; distance += 0.5)
        {
            Assert.True(MissGeometry.Scale(0.152, distance + 0.5) < MissGeometry.Scale(0.152, distance));
        }
    }

    [Fact(DisplayName = "Geometry: left and right are mirror images for every bearing and distance")]
    public void Mirror_images()
    {
        var seen = new HashSet<Reading>();
        foreach (var sells in Enum.GetValues<Sells>())
        {
            for (var target = 0; target < Bearing.Circle; target++)
            {
                for (var lens = 0; lens < Bearing.Circle; lens++)
                {
                    foreach (var distance in new[] { 150, 400, 900 })
                    {
                        var reading = Lens.Of(Place(lens, distance), Hit(target, sells));
                        Assert.Equal(reading, Lens.Of(Place(-lens, distance), Hit(-target, sells)));
                        Assert.Equal(reading, Lens.Of(Place(lens + 5, distance), Hit(target + 5, sells)));
                        seen.Add(reading);
                    }
                }
            }
        }

        Assert.Equal(4, seen.Count);
    }

    [Fact(DisplayName = "Geometry: a far lens reads the same from in front and from behind")]
    public void Front_and_behind()
    {
        for (var off = 0; off < Bearing.Circle; off++)
        {
            Assert.Equal(Lens.Of(Place(off, 15000), Hit(0, Sells.Along)), Lens.Of(Place(off + 12, 15000), Hit(0, Sells.Along)));
        }
    }

    [Fact(DisplayName = "Sight lines: nothing reads from a place where the audit's sightline rule would not let it read")]
    public void Never_kinder_than_the_audit()
    {
        var (reads, both) = (0, 0);
        foreach (var sells in Enum.GetValues<Sells>())
        {
            for (var lens = 0; lens < Bearing.Circle; lens++)
            {
                for (var distance = 100; distance <= 1500; distance += 50)
                {
                    var audit = Sightline.Reads(sells, Sightline.OffLine(new Bearing(lens), 3));
                    var here = Lens.Reads(Lens.Of(Place(lens, distance), Hit(3, sells)));
                    Assert.True(audit || !here);
                    reads += audit ? 1 : 0;
                    both += here ? 1 : 0;
                }
            }
        }

        Assert.InRange(both, reads / 2, reads - 1);
    }

    private static SetUp Place(int bearing, int distance) => new(new Bearing(bearing), new Centimetres(distance), new Centimetres(165));

    private static Hit Hit(int bearing, Sells sells) => new()
    {
        Move = 1,
        Start = 0,
        Attacker = 0,
        Name = "Jab right",
        Sells = sells,
        Bearing = new Bearing(bearing).HalfHours,
        Distance = 100,
        Height = 165,
    };
}

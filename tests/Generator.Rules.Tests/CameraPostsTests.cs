using Generator.Domain;

namespace Generator.Rules.Tests;

public class CameraPostsTests
{
    private static readonly FloorPlan Floor = new() { Width = new Centimetres(1000), Depth = new Centimetres(1000), MarkX = new Centimetres(500), MarkY = new Centimetres(500) };

    [Fact]
    public void Nobody_comes_through_a_camera_and_its_operator()
    {
        var reach = new FloorReach(Floor, new Settle(), [Lens("A", 0, 200, 150)]);

        // Half a metre for camera and operator, 30 cm of clearance: 120 cm remain; half an hour to the side the way is still cut.
        Assert.Equal(120, reach[0]);
        Assert.Equal("camera A", reach.InTheWay(0));
        Assert.InRange(reach[1], 130, 136);
        Assert.Equal("camera A", reach.InTheWay(23));

        // At 1 o'clock the line passes it at 1 m, and behind the hero's back it is not in the way.
        Assert.Null(reach.InTheWay(2));
        Assert.Equal(470, reach[12]);
    }

    [Fact]
    public void What_hangs_or_watches_takes_up_no_floor()
    {
        var reach = new FloorReach(Floor, new Settle(), [Lens("crane", 0, 200, 251), Lens("audience 12", 0, 200, 120)]);
        Assert.Equal(470, reach[0]);
        Assert.Null(reach.InTheWay(0));
    }

    private static Camera Lens(string name, int bearing, int distance, int height) => new(name, new Bearing(bearing), new Centimetres(distance), new Centimetres(height));
}

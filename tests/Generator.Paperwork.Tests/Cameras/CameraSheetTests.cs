using Generator.Domain;
using Generator.Paperwork.Cameras;
using Generator.Paperwork.Text;
using Generator.Rules.Sight;
using Generator.Testing;

namespace Generator.Paperwork.Tests.Cameras;

public class CameraSheetTests
{
    private static readonly IReadOnlyList<Hit> Hits = Hit.Of(Ferry.Scene, Ferry.Steps);

    private static readonly SetUp Front = new(new Bearing(1), new Centimetres(500), new Centimetres(150));

    [Fact]
    public void The_camera_plan_of_the_ferry() => Golden.Matches("camera-plan", CameraSheet.Of(Ferry.Scene, new CameraPlan(Hits, Ferry.Routine.Brief.Cameras, [Front])));

    [Fact]
    public void Hits_that_read_from_nowhere_are_named()
    {
        var side = new Camera("Side", new Bearing(7), new Centimetres(600), new Centimetres(150));
        var plan = new CameraPlan(Hits, [side], []);
        Assert.NotEmpty(plan.Unread);
        var text = CameraSheet.Of(Ferry.Scene, plan);
        Assert.All(plan.Unread, h => Assert.Contains($"  {new HalfCounts(h.Start).ToCountText()}: {h.Technique.Name} on ", text, StringComparison.Ordinal));
    }

    [Fact]
    public void Many_set_ups_go_on_below_and_stay_on_the_page()
    {
        var cameras = Enumerable.Range(0, 12).Select(i => new Camera($"Balcony {i}", new Bearing(2 * i), new Centimetres(900), new Centimetres(400))).ToList();
        var text = CameraSheet.Of(Ferry.Scene, new CameraPlan(Hits, cameras, []));
        Assert.All(text.Split('\n'), l => Assert.InRange(Page.LengthOf(l), 0, Page.Width));
        Assert.Equal(3, text.Split("\n  COUNT ").Length - 1);
    }

    [Fact]
    public void Without_hits_and_cameras_it_says_so()
    {
        var text = CameraSheet.Of(Ferry.Scene, new CameraPlan([], [], []));
        Assert.Contains("SET-UPS\n  none\n", text, StringComparison.Ordinal);
        Assert.Contains("no hit of this routine is a planned miss", text, StringComparison.Ordinal);
    }
}

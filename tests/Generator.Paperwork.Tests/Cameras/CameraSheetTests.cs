using Generator.Domain;
using Generator.Paperwork.Cameras;
using Generator.Paperwork.Text;
using Generator.Rules.Replaying;
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
        Assert.All(plan.Unread, h => Assert.Contains($"  m{h.Move} c{new HalfCounts(h.Start).ToCountText()}: {h.Name}{(h.OnHero ? " by Piet" : string.Empty)} on ", text, StringComparison.Ordinal));
    }

    [Fact]
    public void A_blow_that_the_hero_sells_is_in_the_plan_and_one_with_contact_is_not()
    {
        var brief = Ferry.Routine.Brief;
        var scene = Ferry.Scene;
        var moves = new[]
        {
            new Move { Start = HalfCounts.Zero, Attacker = 0, Attack = "swing-right", Technique = "takes-face-hit", Reaction = "presses-on" },
            new Move { Start = HalfCounts.FromCounts(6), Attacker = 1, Attack = "body-punch-right", Technique = "takes-body-hit", Reaction = "presses-on" },
            new Move { Start = HalfCounts.FromCounts(12), Attacker = 2, Attack = "cross-right", Technique = "knocked-down", Reaction = "presses-on" },
        };
        var steps = Replay.Of(scene, new Routine { Brief = brief, Placements = Ferry.Routine.Placements, Moves = moves });
        var hits = Hit.Of(scene, steps);
        Assert.Equal([(1, Sells.Across), (3, Sells.Along)], hits.Select(h => (h.Move, h.Sells)));
        Assert.All(hits, h => Assert.True(h is { OnHero: true, Distance: 0 }));
        Assert.Equal(brief.Hero.Height.Value * 935 / 1000, hits[0].Height);
        var text = CameraSheet.Of(scene, new CameraPlan(hits, brief.Cameras, []));
        Assert.Contains("Swing right by " + brief.Attackers[0].Name, text, StringComparison.Ordinal);
        Assert.DoesNotContain("Body punch", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Many_set_ups_go_on_below_and_stay_on_the_page()
    {
        var cameras = Enumerable.Range(0, 12).Select(i => new Camera($"Balcony {i}", new Bearing(2 * i), new Centimetres(900), new Centimetres(400))).ToList();
        var text = CameraSheet.Of(Ferry.Scene, new CameraPlan(Hits, cameras, []));
        Assert.All(text.Split('\n'), l => Assert.InRange(Page.LengthOf(l), 0, Page.Width));
        Assert.Equal(4, text.Split("\n  MOVE  COUNT ").Length - 1);
    }

    [Fact]
    public void Without_hits_and_cameras_it_says_so()
    {
        var text = CameraSheet.Of(Ferry.Scene, new CameraPlan([], [], []));
        Assert.Contains("SET-UPS\n  none\n", text, StringComparison.Ordinal);
        Assert.Contains("no hit of this routine is a planned miss", text, StringComparison.Ordinal);
    }
}

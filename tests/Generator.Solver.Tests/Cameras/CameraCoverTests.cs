using Generator.Domain;
using Generator.Library;
using Generator.Library.Loading;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Rules.Sight;
using Generator.Solver.Cameras;

namespace Generator.Solver.Tests.Cameras;

/// <summary>Three straight blows, to 12, 3 and 6 o'clock.</summary>
public class CameraCoverTests
{
    private static readonly Book Book = LibraryLoader.LoadBundled([]).Value!;

    [Fact]
    public void Straight_blows_across_one_another_take_two_set_ups_and_none_is_missed()
    {
        var plan = Plan(new Brief { Attackers = Cast });
        Assert.Equal(3, plan.Hits.Count);
        Assert.Equal(2, plan.Added.Count);
        Assert.Empty(plan.Unread);
        Assert.All(plan.Added, s => Assert.True(s.Distance.Value >= 400, "The floor is 4 m to each side."));
    }

    [Fact]
    public void No_single_set_up_of_the_grid_would_do()
    {
        var plan = Plan(new Brief { Attackers = Cast });
        Assert.DoesNotContain(SetUpGrid.Of(new FloorPlan()), s => plan.Hits.All(h => Lens.Reads(Lens.Of(s, h))));
    }

    /// <summary>Walls along the floor at 12 and at 3: where set-ups stand without them.</summary>
    [Fact]
    public void No_camera_looks_through_a_wall()
    {
        Obstacle[] walls = [Wall(0, 780, 800, 20), Wall(780, 0, 20, 780)];
        var open = Plan(new Brief { Attackers = Cast });
        Assert.Contains(open.Added, s => s.Bearing.HalfHours <= 8);
        var plan = Plan(new Brief { Attackers = Cast, Floor = new FloorPlan { Obstacles = walls } });
        Assert.Equal(2, plan.Added.Count);
        Assert.Empty(plan.Unread);
        Assert.All(plan.Added, s => Assert.InRange(s.Bearing.HalfHours, 9, 23));
        Assert.All(open.Added.Where(s => s.Bearing.HalfHours <= 8), s => Assert.DoesNotContain(plan.Hits, h => Lens.Reads(Lens.Of(s, h))));

        static Obstacle Wall(int x, int y, int width, int depth) => new("wall", new Centimetres(x), new Centimetres(y), new Centimetres(width), new Centimetres(depth)) { Kind = "wall" };
    }

    [Fact]
    public void A_given_camera_takes_its_hits_off_the_rest()
    {
        var plan = Plan(new Brief { Attackers = Cast, Cameras = [new Camera("A", new Bearing(0), new Centimetres(600), new Centimetres(210))] });
        var extra = Assert.Single(plan.Added);
        Assert.True(Lens.Reads(Lens.Of(extra, plan.Hits[1])));
        Assert.Equal(2, plan.Places.Count);
    }

    [Fact]
    public void A_fight_without_planned_misses_needs_no_camera()
    {
        var scene = new Scene(new Brief { Attackers = Cast }, Book);
        var plan = CameraCover.Of(scene, [])!;
        Assert.Empty(plan.Added);
        Assert.Empty(plan.Hits);
    }

    [Fact]
    public void A_camera_leaves_eye_level_only_for_what_it_reads_better()
    {
        var plan = Plan(new Brief { Attackers = Cast });
        List<Reading> Seen(SetUp setUp) => [.. plan.Hits.Select(h => Lens.Of(setUp, h))];
        Assert.Contains(plan.Added, s => s.Height.Value == 150);
        Assert.All(plan.Added.Where(s => s.Height.Value != 150), s => Assert.NotEqual(Seen(s), Seen(s with { Height = new Centimetres(150) })));
    }

    /// <summary>What is farther off than it is taught sells to fewer: half a metre of air does not sell from the side of the line from which 15 cm just do.</summary>
    [Fact]
    public void The_true_gap_counts()
    {
        var brief = new Brief { Attackers = Cast, Cameras = [new Camera("A", new Bearing(1), new Centimetres(600), new Centimetres(165))] };
        var (taught, far) = (Plan(brief), Plan(brief, new Dictionary<int, double> { [0] = 0.5 }));
        bool Sells(CameraPlan plan) => Lens.Reads(Lens.Of(SetUp.Of(brief.Cameras[0]), plan.Hits[0]));
        Assert.True(Sells(taught));
        Assert.False(Sells(far));
        Assert.Equal([0.5, MissGeometry.Gap, MissGeometry.Gap], far.Hits.Select(h => h.Gap));
    }

    [Fact]
    public void The_same_fight_gives_the_same_plan() => Assert.Equal(Plan(new Brief { Attackers = Cast }).Added, Plan(new Brief { Attackers = Cast }).Added);

    private static IReadOnlyList<AttackerPart> Cast => [new AttackerPart { Name = "Bruno" }, new AttackerPart { Name = "Wanda" }, new AttackerPart { Name = "Piet" }];

    private static CameraPlan Plan(Brief brief, IReadOnlyDictionary<int, double>? gaps = null)
    {
        var routine = new Routine
        {
            Brief = brief,
            Placements = [.. new[] { 0, 6, 12 }.Select(b => new Placement(new Bearing(b), new Centimetres(150), HalfCounts.Zero))],
            Moves = [.. Enumerable.Range(0, 3).Select(a => new Move { Start = HalfCounts.FromCounts(4 * a), Attacker = a, Technique = "jab-left", Reaction = "head-back" })],
        };
        var scene = new Scene(brief, Book);
        return CameraCover.Of(scene, Replay.Of(scene, routine), gaps)!;
    }
}

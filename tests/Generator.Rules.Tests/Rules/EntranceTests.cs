using Generator.Domain;
using Generator.Rules.Bodies;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Rules;

/// <summary>Who is not in from the start walks in: from where, round what, how fast, and past whom.</summary>
public sealed class EntranceTests
{
    private const string Blocks = "swing-right > outside-block-left {limb-stopped}";

    private const string Falls = Blocks + " ; step-punch-right {back-fall} ; Ada: +22 " + Blocks;

    private static Scene SceneOf(FloorPlan floor, IReadOnlyList<Camera>? cameras = null) =>
        new(Fight.Of("left-lead Bruno@12/250 Wanda@12/300", Blocks).Scene.Brief with { Floor = floor, Cameras = cameras ?? [] }, Fight.Of("left-lead Bruno@12/250 Wanda@12/300", Blocks).Scene.Book);

    [Fact]
    public void Without_a_way_in_they_come_straight_over_the_edge_at_their_own_speed()
    {
        var scene = SceneOf(new FloorPlan());
        var legs = Entries.Legs(scene, 1, 0, 300, 20)!.Chain().Where(l => l.Kind == LegKind.Enters).ToList();
        var leg = Assert.Single(legs);
        Assert.Equal((new Place(0, 400), new Place(0, 300), 20.0), (leg.Start, leg.End, leg.To));
        Assert.Equal(1.0, (leg.To - leg.From) * 0.3 * scene.Brief.Attackers[1].Speed / 100, 6);
    }

    /// <summary>A crate of 1 m × 0.6 m between the edge and the place, and a door beside it.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Round_whatever_stands_there(bool door)
    {
        var floor = new FloorPlan
        {
            Obstacles = [new Obstacle("crate", new Centimetres(350), new Centimetres(640), new Centimetres(100), new Centimetres(60))],
            WaysIn = door ? [new WayIn("the pit door", new Centimetres(400), new Centimetres(800))] : [],
        };
        var scene = SceneOf(floor, [new Camera("A", new Bearing(2), new Centimetres(350), new Centimetres(150))]);
        var way = scene.Entries.To(0, 200);
        Assert.Null(way.Closed);
        Assert.Equal(door ? "the pit door" : null, way.From);
        Assert.All(way.Places.Zip(way.Places.Skip(1)), l => Assert.Null(scene.Floor.Between(l.First, l.Second)));
        Assert.True(way.Places.Count > 2);
    }

    [Fact]
    public void Whoever_cannot_come_in_at_all_is_told_so()
    {
        var floor = new FloorPlan
        {
            Obstacles = [new Obstacle("wall", new Centimetres(0), new Centimetres(720), new Centimetres(800), new Centimetres(20))],
            WaysIn = [new WayIn("the gate", new Centimetres(400), new Centimetres(800))],
        };
        Assert.Equal("wall", SceneOf(floor).Entries.To(0, 250).Closed);
        var late = Fight.Of("left-lead Bruno@6/250 Wanda@12/250/20", Blocks);
        Verify.Rule("spacing").Given(late.With(b => b with { Floor = floor })).Finds(1, 0).As(Severity.Unsafe).Concerns("Wanda").Says("wall stands between");
        Verify.Rule("spacing").Given(late.With(b => b with { Floor = floor with { Obstacles = [] } })).FindsNothing();
    }

    /// <summary>From a door at 12 Wanda comes past Bruno, who stands on her way; from one beyond 10 through the fall that puts him down, or over him as he lies.</summary>
    [Theory]
    [InlineData("spacing", 600, 1200, "left-lead Ada@9/250 Bruno@1:30/283 Wanda@3/300/20", "Ada: +22 " + Blocks, 1, "pass 0.00 m apart")]
    [InlineData("clear-lane", 0, 800, "left-lead Bruno@12/150 Wanda@2/300/8 Ada@6/250", Falls, 2, "still being sent, at 0.50 m")]
    [InlineData("underfoot", 0, 800, "left-lead Bruno@12/150 Wanda@2/300/20 Ada@6/250", Falls, 3, "walks over Bruno")]
    public void Nobody_comes_in_through_another(string rule, int x, int y, string start, string moves, int move, string says)
    {
        var fight = Fight.Of(start, moves);
        var door = fight.With(b => b with { Floor = b.Floor with { WaysIn = [new WayIn("the door", new Centimetres(x), new Centimetres(y))] } });
        Verify.Rule(rule).Given(door).Finds(1, move).As(Severity.Unsafe).Concerns("Wanda, Bruno").Says(says);
        Verify.Rule(rule).Given(fight).FindsNothing();
    }

    /// <summary>
    /// Bruno is called from 5.7 m out and sets off before the move on Ada has ended; through him Wanda, coming from a door behind him, would walk to be in as that move ends. Once he has gone by, nobody is
    /// in her way.
    /// </summary>
    [Theory]
    [InlineData(20, 1)]
    [InlineData(28, 0)]
    public void Nor_through_somebody_who_set_off_before_the_move_before_had_ended(int entrance, int findings)
    {
        var fight = Fight.Of($"left-lead Ada@6/250 Bruno@12/570 Wanda@1/390/{entrance}", "Ada: +18 " + Blocks + " ; Bruno: " + Blocks)
            .With(b => b with { Floor = b.Floor with { WaysIn = [new WayIn("the door", new(400), new(1200))] } });
        var step = fight.Steps()[1];
        Assert.True(step.After.Attackers[1].Leg!.Begins(1) < step.Before.Time && step.Before.Time == 20);
        Verify.Rule("spacing").Given(fight).Tells(findings, 2, "Wanda, Bruno");
    }
}

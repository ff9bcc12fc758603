using Generator.Domain;
using Generator.Rules.Judging;
using Generator.Rules.Rules;
using Generator.Rules.Tests.Fights;
using Generator.Rules.Tests.Replaying;

namespace Generator.Rules.Tests.Rules;

public sealed class ClearLaneTests
{
    private const string Throw = "cross-right > wrist-catch-left {arm-caught} ; hip-throw-right {thrown-over}";

    private static Fight Small(string start, string moves, int width) =>
        Fight.Of(start, moves).With(b => b with { Floor = b.Floor with { Width = new(width), Depth = new(width), MarkX = new(width / 2), MarkY = new(width / 2) } });

    /// <summary>The throw draws Bruno in to 0.65 arms, 44 cm, and sends him 40 cm on, past the mark: 84 cm out, 36 cm short of Wanda.</summary>
    [Fact]
    [Fails("clear-lane")]
    public void Nobody_is_thrown_onto_another() =>
        Verify.Rule("clear-lane").Given(Fight.Of("square Bruno@12/250 Wanda@6/120", Throw)).Finds(1, 2).As(Severity.Unsafe).Measures(0.36m, 0.6m, "m").Concerns("Bruno, Wanda");

    [Fact]
    [Passes("clear-lane")]
    public void Aside_is_well() => Verify.Rule("clear-lane").Given(Fight.Of("square Bruno@12/250 Wanda@4/120", Throw)).FindsNothing();

    /// <summary>A swing stops at 97 cm, a back fall carries the feet 40 cm and lays the head 1.26 m farther: 2.63 m out. Half of 4.2 m less 0.3 m is 1.8 m.</summary>
    [Fact]
    public void Nobody_falls_off_the_floor() =>
        Verify.Rule("clear-lane").Given(Small("left-lead Bruno@12/150", "swing-right > outside-block-left {limb-stopped} ; step-punch-right {back-fall}", 420)).Finds(1, 2).Measures(2.63m, 1.80m, "m");

    [Fact]
    public void A_floor_just_deep_enough_is_well() =>
        Verify.Rule("clear-lane").Given(Small("left-lead Bruno@12/150", "swing-right > outside-block-left {limb-stopped} ; step-punch-right {back-fall}", 586)).FindsNothing();

    [Fact]
    public void Nor_into_an_obstacle() =>
        Verify.Rule("clear-lane").Given(Fight.Of("left-lead Bruno@12/150", "swing-right > outside-block-left {limb-stopped} ; step-punch-right {back-fall}")
            .With(b => b with { Floor = b.Floor with { Obstacles = [new Obstacle("bollard", new(570), new(810), new(60), new(60))] } })).Finds(1, 2).Measures(2.63m, 1.80m, "m").Says("bollard closes the floor");

    [Fact]
    public void Who_runs_off_leaves_by_the_exit() =>
        Verify.Rule("clear-lane").Given(Small("left-lead Bruno@12/150", "swing-right > outside-block-left {limb-stopped} ; run-off-right {out-flees}", 420)).FindsNothing();

    /// <summary>From where they meet, 80 cm on; Wanda, 30° round at 1.5 m, is 75 cm beside the way: clear for what both do together, not for an unguided stagger.</summary>
    [Theory]
    [InlineData("overhand-right > stop-kick-right {staggers-back}", 0, 1)]
    [InlineData("swing-right > outside-block-left {limb-stopped} ; step-punch-right {staggers-back}", 1, 2)]
    public void Who_is_not_guided_wants_more_room(string moves, int findings, int move) =>
        Verify.Rule("clear-lane").Given(Fight.Of("left-lead Bruno@12/200 Wanda@1/150", moves)).Finds(findings, move);

    /// <summary>Bruno turns with the parried arm from 12 to 12:30, or goes down to a knee where he stands; Wanda stands at 1, 50 cm from there.</summary>
    [Theory]
    [InlineData("swing-right > parry-down-left {limb-swept-in}")]
    [InlineData("jab-right > step-back {falls-short} ; low-side-kick-right {to-one-knee}")]
    public void Small_turns_and_falls_to_the_knee_want_room(string moves) =>
        Assert.Contains(Fight.Of("left-lead Bruno@12/250 Wanda@1/110", moves).Audit().Findings, f => f.Rule == "clear-lane" && f.Allowed == 0.6m);

    /// <summary>Straight on from 12 the fall ends 1.4 m out: Wanda behind it is passed by nobody, though she stands on the same bearing.</summary>
    [Fact]
    public void The_way_is_the_one_really_gone() =>
        Verify.Rule("clear-lane").Given(Fight.Of("left-lead Bruno@12/200 Wanda@6/120", "swing-right > outside-block-left {limb-stopped} ; step-punch-right {staggers-back}")).FindsNothing();

    /// <summary>And carried on, so that the two end apart.</summary>
    [Fact]
    public void Who_is_bumped_into_is_part_of_it()
    {
        var fight = Fight.Of("square Bruno@12/250 Wanda@12:30/180", "swing-right > outside-block-left {limb-stopped} ; +1 double-palm {crashes-into}");
        Verify.Rule("clear-lane").Given(fight).FindsNothing();
        var crash = fight.Steps()[1];
        var (one, other) = (crash.After.Attackers[0], crash.After.Attackers[1]);
        Assert.Equal(1, crash.Second);
        Assert.InRange(FloorGeometry.Apart(1, one.Distance, crash.Before.Attackers[1].Distance), 0, 59);
        Assert.InRange(FloorGeometry.Apart(1, one.Distance, other.Distance), 60, 100);
    }

    /// <summary>Bruno, held half a metre out, is turned from 12 to 3 into the way of Wanda's blow: the floor must reach so far there, and on the way.</summary>
    [Theory]
    [InlineData(60, false, 1)]
    [InlineData(300, true, 1)]
    [InlineData(300, false, 0)]
    public void Nor_is_anybody_led_off_the_floor(int east, bool post, int findings)
    {
        var hold = CaseBook.Hit with { Id = "hold", LeftEnd = HandEnd.Holding };
        var shield = CaseBook.Hit with { Id = "shield", CarriesHeld = true, Band = CaseBook.Hit.Band with { Behind = new(70) } };
        var floor = new FloorPlan { Width = new(600 + east), Depth = new(1200), MarkX = new(600), MarkY = new(600), Obstacles = post ? [new Obstacle("post", new(640), new(640), new(20), new(20))] : [] };
        var step = new Case().On(floor).At("12", 70).At("3", 60).Knows(hold, shield).Play(Case.Row(0, 0, "hold", "caught"), Case.Row(4, 1, "shield", "reels", "blow"));
        var tally = new Tally(true);
        RuleBook.All[RuleBook.IndexOf("clear-lane")].Observe(step.Scene, null, step, tally);
        Assert.Equal(findings, tally.Findings.Count(f => f.Message.Contains("leads", StringComparison.Ordinal)));
    }

    [Fact]
    public void Whoever_has_not_come_in_is_in_nobodys_way() =>
        Verify.Rule("clear-lane").Given(Fight.Of("square Bruno@12/250 Wanda@6/120/30", Throw)).FindsNothing();

    /// <summary>Thrown over, Bruno lies across at 6, 63 cm to either side; the floor reaches 80.</summary>
    [Fact]
    public void Nor_lies_with_the_head_at_the_edge() =>
        Verify.Rule("clear-lane").Given(Fight.Of("square Bruno@12/250", Throw).With(b => b with { Floor = b.Floor with { Width = new(160), MarkX = new(80) } }))
            .Finds(1, 2).Measures(0.17m, 0.3m, "m").Says("the head or the feet 0.17 m from the floor's edge");
}

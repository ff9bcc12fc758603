using Generator.Domain;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Rules;

public sealed class ClearLaneTests
{
    private const string Throw = "cross-right > wrist-catch-left {arm-caught} ; hip-throw-right {thrown-over}";

    private static Fight Small(string start, string moves, int width) =>
        Fight.Of(start, moves).With(b => b with { Floor = b.Floor with { Width = new(width), Depth = new(width), MarkX = new(width / 2), MarkY = new(width / 2) } });

    /// <summary>The throw draws Bruno in to 0.65 arms, 44 cm, and sends him 40 cm on, past the mark: 84 cm out, rounded to 80, 40 cm short of Wanda.</summary>
    [Fact]
    [Fails("clear-lane")]
    public void Nobody_is_thrown_onto_another() =>
        Verify.Rule("clear-lane").Given(Fight.Of("square Bruno@12/250 Wanda@6/120", Throw)).Finds(1, 2).As(Severity.Unsafe).Measures(0.4m, 0.8m, "m").Concerns("Bruno, Wanda");

    [Fact]
    [Passes("clear-lane")]
    public void Aside_is_well() => Verify.Rule("clear-lane").Given(Fight.Of("square Bruno@12/250 Wanda@4/120", Throw)).FindsNothing();

    /// <summary>A swing stops at 97 cm, a back fall carries 90 cm: 1.87 m out. Half of 4.2 m less 0.3 m is 1.8 m.</summary>
    [Fact]
    public void Nobody_falls_off_the_floor() =>
        Verify.Rule("clear-lane").Given(Small("left-lead Bruno@12/150", "swing-right > outside-block-left {limb-stopped} ; step-punch-right {back-fall}", 420)).Finds(1, 2).Measures(1.87m, 1.80m, "m");

    [Fact]
    public void A_floor_just_deep_enough_is_well() =>
        Verify.Rule("clear-lane").Given(Small("left-lead Bruno@12/150", "swing-right > outside-block-left {limb-stopped} ; step-punch-right {back-fall}", 434)).FindsNothing();

    [Fact]
    public void Nor_into_an_obstacle() =>
        Verify.Rule("clear-lane").Given(Fight.Of("left-lead Bruno@12/150", "swing-right > outside-block-left {limb-stopped} ; step-punch-right {back-fall}")
            .With(b => b with { Floor = b.Floor with { Obstacles = [new Obstacle("bollard", new(570), new(810), new(60), new(60))] } })).Finds(1, 2).Measures(1.87m, 1.80m, "m");

    [Fact]
    public void Who_runs_off_leaves_by_the_exit() =>
        Verify.Rule("clear-lane").Given(Small("left-lead Bruno@12/150", "swing-right > outside-block-left {limb-stopped} ; run-off-right {out-flees}", 420)).FindsNothing();

    /// <summary>From 97 cm staggering 80 leads to 1.77 m; Wanda, 30° round at 1.5 m, is 75 cm beside the way: clear for one on their feet, not for a fall.</summary>
    [Theory]
    [InlineData("stop-kick-right {staggers-back}", 0)]
    [InlineData("stop-kick-right {sits-down}", 1)]
    public void A_fall_wants_more_room_than_a_stagger(string move, int findings) =>
        Verify.Rule("clear-lane").Given(Fight.Of("left-lead Bruno@12/200 Wanda@1/150", "overhand-right > " + move)).Finds(findings, 1);

    [Fact]
    public void Who_is_bumped_into_is_part_of_it() =>
        Verify.Rule("clear-lane").Given(Fight.Of("square Bruno@12/250 Wanda@12:30/350", "swing-right > outside-block-left {limb-stopped} ; +1 double-palm {crashes-into}")).FindsNothing();

    [Fact]
    public void Whoever_has_not_come_in_is_in_nobodys_way() =>
        Verify.Rule("clear-lane").Given(Fight.Of("square Bruno@12/250 Wanda@6/120/30", Throw)).FindsNothing();
}

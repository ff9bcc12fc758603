using Generator.Domain;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Rules;

public sealed class UnderfootTests
{
    /// <summary>A swing stops at 97 cm, the feet go back 40: Bruno lies at 12 from 1.37 m outwards, and gets up after 3.3 s and the margin.</summary>
    private const string Down = "swing-right > outside-block-left {limb-stopped} ; step-punch-right {back-fall}";

    private static Found Judge(string start, string moves) => Verify.Rule("underfoot").Given(Fight.Of(start, moves));

    [Fact]
    [Fails("underfoot")]
    public void Nobody_walks_in_over_a_body() =>
        Judge("left-lead Bruno@12/150 Wanda@12:30/300", Down + " ; Wanda: +1 swing-right > outside-block-left {limb-stopped}").Finds(1, 3).As(Severity.Unsafe).Concerns("Wanda, Bruno").Says("walks over");

    [Fact]
    [Passes("underfoot")]
    public void Round_the_body_is_well() => Judge("left-lead Bruno@12/150 Wanda@3/300", Down + " ; Wanda: +1 swing-right > outside-block-left {limb-stopped}").FindsNothing();

    /// <summary>Wanda, 30° round, walks past Bruno's feet at 1.37 m × sin 30° = 68 cm; stood at 15° round it would be 35.</summary>
    [Fact]
    public void Past_the_feet_is_well() => Judge("left-lead Bruno@12/150 Wanda@1/300", Down + " ; Wanda: +1 swing-right > outside-block-left {limb-stopped}").FindsNothing();

    [Fact]
    public void Nor_falls_at_the_feet_of_somebody_who_stands_there() =>
        Judge("left-lead Bruno@12/150 Wanda@12:30/180", Down).Finds(1, 2).Says("falls at the feet of").Concerns("Bruno, Wanda");

    [Fact]
    public void Who_has_got_up_is_no_body_any_more() =>
        Judge("left-lead Bruno@12/150 Wanda@12:30/420", Down + " ; Wanda: +40 swing-right > outside-block-left {limb-stopped}").FindsNothing();

    [Fact]
    public void Who_is_out_lies_to_the_end() =>
        Judge("left-lead Bruno@12/150 Wanda@12:30/420", Down + " ; stomp-finish-left {out-lying} ; Wanda: +40 swing-right > outside-block-left {limb-stopped}")
            .Finds(1, 4);

    /// <summary>Whoever is let go at the hero's feet gives ground or rolls clear, so that the next move finds the floor free.</summary>
    [Fact]
    public void Who_is_let_go_ends_clear_of_the_hero()
    {
        var fight = Fight.Of("square Bruno@12/250", "cross-right > wrist-catch-left {arm-caught} ; hip-throw-right {thrown-and-held} ; let-go {left-lying}");
        var steps = fight.Steps();
        Assert.True(steps[1].After.Attackers[0].Distance < 50);
        Assert.Equal(50, steps[2].After.Attackers[0].Distance);
    }

    /// <summary>Bruno lies across at 6, 84 cm out. Wanda's swing stops at 97 cm, where a head kick, 134 cm at the nearest, has the hero step back 37.</summary>
    [Theory]
    [InlineData("high-round-kick-right {head-turns}", 1)]
    [InlineData("cross-right {head-back}", 0)]
    public void Nor_does_the_hero_step_back_onto_a_body(string technique, int findings)
    {
        var found = Judge("square Bruno@12/250 Wanda@12/400", "cross-right > wrist-catch-left {arm-caught} ; hip-throw-right {thrown-over} ; Wanda: +8 swing-right > outside-block-left {limb-stopped} ; " + technique);
        found.Finds(findings, 4);
        if (findings > 0)
        {
            found.Measures(0.47m, 0.5m, "m").Says("from where the technique steps");
        }
    }
}

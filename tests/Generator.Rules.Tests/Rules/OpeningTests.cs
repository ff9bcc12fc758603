using Generator.Domain;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Rules;

public sealed class OpeningTests
{
    private const string Block = "swing-right > outside-block-left {limb-stopped} ; ";

    private static Found Judge(string moves, string start = "left-lead Bruno@12/250") => Verify.Rule("opening").Given(Fight.Of(start, moves));

    [Fact]
    [Fails("opening")]
    public void A_knee_to_the_head_needs_somebody_folded() =>
        Judge(Block + "cross-right {head-back} ; knee-to-head-left {back-fall}").Finds(1, 3).As(Severity.Broken).Says("with the head back");

    [Fact]
    [Passes("opening")]
    public void Folded_it_finds_one() => Judge(Block + "body-punch-right {folds} ; knee-to-head-left {back-fall}").FindsNothing();

    /// <summary>0.9 s are 3 half counts from the end of the parry.</summary>
    [Theory]
    [InlineData(3, 0)]
    [InlineData(4, 1)]
    public void An_opening_is_over_in_time(int gap, int findings) =>
        Judge($"swing-right > parry-down-left {{head-drops}} ; +{gap} uppercut-right {{head-back}}").Finds(findings, 2);

    [Fact]
    public void It_tells_by_how_much() =>
        Judge("swing-right > parry-down-left {head-drops} ; +4 uppercut-right {head-back}").Measures(0.5m, 0, "counts").Says("until count 3&");

    [Fact]
    public void Whoever_is_ready_again_is_no_opening_for_an_uppercut() =>
        Judge("swing-right > parry-down-left {head-drops} ; +12 uppercut-right {head-back}").Finds(1, 2);

    [Fact]
    public void A_defence_is_no_follow_up() => Judge(Block + "outside-block-right {limb-stopped}").Finds(1, 2).Says("only answers an attack");

    [Fact]
    public void An_escape_opens_the_grip_it_is_made_for() =>
        Judge("headlock-right > headlocked {keeps-grip} ; headlock-slip-right {limb-swept-in}", "square Bruno@12/150").FindsNothing();

    [Fact]
    public void And_no_other() => Judge("headlock-right > headlocked {keeps-grip} ; hip-frame {grip-breaks}", "square Bruno@12/150").Finds(1, 2);

    [Theory]
    [InlineData("cross-right {folds}", "does not suit")]
    [InlineData("cross-right", "leaves open how Bruno reacts")]
    [InlineData("body-punch-right {jolts-in-hold}", "held by the hero")]
    [InlineData("body-punch-right {keeps-grip}", "gripping already")]
    [InlineData("body-punch-right {folds} ; body-punch-left {elbow-meets-blow}", "is only for somebody ready, or no more than off balance", 3)]
    [InlineData("double-palm {crashes-into}", "needs a second attacker")]
    [InlineData("heads-together {out-crumples}", "Heads together needs a second attacker, folded, with the head back, turned or off balance, 30 to 120° round from Bruno and 0.50 m to 1.50 m from the mark")]
    public void The_reaction_suits_the_technique_and_the_moment(string move, string words, int at = 2) => Judge(Block + "+1 " + move).Finds(1, at).Says(words);

    [Theory]
    [InlineData("overhand-right {to-one-knee}", "To one knee is only for somebody on their feet; Bruno is kneeling")]
    [InlineData("cross-right {staggers-back}", "is only for somebody on their feet")]
    [InlineData("swing-right {spins-away}", "is only for somebody on their feet")]
    public void Whoever_kneels_staggers_nowhere_and_goes_to_no_knee(string move, string words) =>
        Judge(Block + "low-round-kick-right {to-one-knee} ; " + move).Finds(1, 3).As(Severity.Broken).Says(words);

    [Theory]
    [InlineData("overhand-right {sags-on-knee}")]
    [InlineData("overhand-right {front-fall}")]
    [InlineData("finishing-cross-right {out-flat}")]
    public void Whoever_kneels_stays_so_falls_or_is_out(string move) => Judge(Block + "low-round-kick-right {to-one-knee} ; " + move).FindsNothing();

    [Fact]
    public void Who_stands_does_not_sag_on_a_knee() => Judge(Block + "overhand-right {sags-on-knee}").Finds(1, 2).Says("only for somebody on a knee");

    [Fact]
    public void What_to_do_about_a_reaction_is_said() =>
        Assert.Equal("Let it be head back, head turns, staggers back, sits down, rocks back, jolts in hold, blocks it, covers up, slips it, steps out of it, slips and comes on or sags on the knee.", Judge(Block + "+1 cross-right").Only.Advice);

    [Fact]
    public void Nobody_reacts_to_a_pause() =>
        Assert.Equal("Leave the reaction out: nobody reacts to this.", Judge(Block + "catch-breath {folds}").Finds(1, 2).As(Severity.Broken).Says("does not suit").Only.Advice);

    [Fact]
    public void A_missing_reaction_is_found_once_and_the_fight_goes_on_as_if_it_were_the_first() =>
        Judge("swing-right > parry-down-left ; knee-to-head-left {back-fall}").Finds(1, 1).Says("as if the reaction were head drops");

    [Fact]
    public void It_is_taken_for_one_that_the_attacker_can_perform() => Verify.Rule("opening")
        .Given(Fight.Of("left-lead Bruno@12/250", Block + "trip-right").WithAttacker(0, a => a with { Limits = ["no-forward-fall"] }))
        .Finds(1, 2).Says("as if the reaction were to both knees");

    [Fact]
    public void Knocked_flat_one_can_be_pinned() => Judge(Block + "cross-right {sits-down} ; knee-pin-right {pinned} ; ground-punch-right {jolts-in-hold} ; let-go {left-lying}").FindsNothing();

    [Fact]
    public void Only_somebody_lying_jerks_on_the_floor() =>
        Judge(Block + "cross-right {sits-down} ; knee-pin-right {pinned} ; ground-punch-right {jerks-on-floor}").Finds(1, 4).Says("on the back already");

    [Fact]
    public void Of_somebody_out_another_rule_speaks() => Judge(Block + "finishing-cross-right {out-flat} ; cross-right {head-back}").FindsNothing();
}

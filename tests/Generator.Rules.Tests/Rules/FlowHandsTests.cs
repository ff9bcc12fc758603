using Generator.Domain;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Rules;

public sealed class FlowHandsTests
{
    private static Found Judge(string moves) => Verify.Rule("flow-hands").Given(Fight.Of("square Bruno@12/250 Wanda@2/350", moves));

    [Fact]
    [Fails("flow-hands")]
    public void The_blocking_hand_is_still_out() =>
        Judge("swing-right > outside-block-left {limb-stopped} ; hook-left {head-turns}").Finds(1, 2).As(Severity.Broken).Says("left hand is still out");

    [Theory]
    [Passes("flow-hands")]
    [InlineData("+1 hook-left {head-turns}")]
    [InlineData("hook-right {head-turns}")]
    [InlineData("cross-right {head-back} ; hook-left {head-turns}")]
    public void Half_a_count_the_other_hand_or_a_move_in_between_bring_it_back(string then) =>
        Judge($"swing-right > outside-block-left {{limb-stopped}} ; {then}").FindsNothing();

    [Fact]
    public void A_hand_that_holds_one_attacker_does_not_parry_another() =>
        Judge("cross-right > wrist-catch-left {arm-caught} ; Wanda: +1 cross-right > inside-parry-left {limb-swept-in}").Finds(1, 2).Says("holding Bruno");

    [Fact]
    public void The_hand_that_holds_goes_on_with_the_one_held() =>
        Judge("cross-right > wrist-catch-left {arm-caught} ; straight-arm-lock-left {bends-over-lock}").FindsNothing();

    [Fact]
    public void A_technique_that_works_while_holding_needs_somebody_held() =>
        Judge("Wanda: swing-left > hold-and-block-right {limb-stopped}").Finds(1, 1).Says("holding somebody else");

    [Theory]
    [InlineData("swing-left > step-back {falls-short}")]
    [InlineData("rush > leap-aside-left {stumbles-past}")]
    [InlineData("rush > side-step-left {stumbles-past}")]
    [InlineData("round-kick-low-left > leg-fade {falls-short}")]
    public void Nobody_steps_away_from_somebody_held(string move) =>
        Judge($"cross-right > wrist-catch-left {{arm-caught}} ; Wanda: +1 {move}").Finds(1, 2).As(Severity.Broken).Says("needs it in guard or out");

    [Theory]
    [InlineData("swing-left > shield-turn-left {limb-stopped}")]
    [InlineData("swing-left > hold-and-block-right {limb-stopped}")]
    [InlineData("swing-left > sway-back {falls-short}")]
    public void Whoever_is_held_stays_held_in_place_or_is_taken_along(string move) =>
        Judge($"cross-right > wrist-catch-left {{arm-caught}} ; Wanda: +1 {move}").FindsNothing();

    [Fact]
    public void Two_hands_out_are_one_finding() =>
        Judge("swing-right > double-forearm-block-left {limb-stopped} ; front-kick-right > low-cross-block {limb-stopped}").Finds(1, 2);

    [Fact]
    public void Of_a_held_hand_another_rule_speaks() =>
        Judge("wrist-grab-same-right > wrist-taken-left {keeps-grip} ; jab-left {head-back}").FindsNothing();
}

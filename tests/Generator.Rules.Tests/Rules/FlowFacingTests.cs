using Generator.Domain;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Rules;

public sealed class FlowFacingTests
{
    private static Found Judge(string moves) => Verify.Rule("flow-facing").Given(Fight.Of("left-lead Bruno@12/250 Wanda@4/350", moves));

    /// <summary>Wanda is 8 half hours round; the right block covers 4, so 4 remain to turn: 60°.</summary>
    [Fact]
    [Fails("flow-facing")]
    public void Half_a_count_turns_thirty_degrees() =>
        Judge("cross-right > parry-down-left {head-drops} ; Wanda: +1 !swing-left > outside-block-right {limb-stopped}").Finds(1, 2).As(Severity.Broken).Measures(60, 30, "degrees");

    [Fact]
    [Passes("flow-facing")]
    public void A_count_turns_ninety() =>
        Judge("cross-right > parry-down-left {head-drops} ; Wanda: +2 !swing-left > outside-block-right {limb-stopped}").FindsNothing();

    /// <summary>The block covers 4 half hours, so 2 remain towards 3 o'clock and 3 towards half past: 30° are part of the technique, 45° are not.</summary>
    [Theory]
    [InlineData("3", 0)]
    [InlineData("3:30", 1)]
    public void Without_a_gap_a_technique_turns_thirty_degrees(string from, int findings) =>
        Verify.Rule("flow-facing").Given(Fight.Of($"left-lead Bruno@12/250 Wanda@{from}/350", "cross-right > parry-down-left {head-drops} ; Wanda: +0 !swing-left > outside-block-right {limb-stopped}")).Finds(findings, 2);

    [Fact]
    public void Whoever_is_bound_does_not_turn() =>
        Verify.Rule("flow-facing").Given(Fight.Of("square Bruno@12/150 Wanda@1/300", "lapel-grab > seized-in-front {keeps-grip} ; Wanda: +6 swing-right > gripper-swing-right {limb-stopped}"))
            .Finds(1, 2).Says("the grip allows 0°");

    [Fact]
    public void Whoever_is_held_by_a_wrist_turns_thirty_degrees_at_most() =>
        Verify.Rule("flow-facing").Given(Fight.Of("square Bruno@12/150 Wanda@4/300", "wrist-grab-same-right > wrist-taken-left {keeps-grip} ; Wanda: +6 !front-kick-right > step-back {falls-short}"))
            .Finds(1, 2).Measures(60, 30, "degrees");
}

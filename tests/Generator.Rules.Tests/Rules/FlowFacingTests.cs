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

    [Theory]
    [InlineData("+0", 1)]
    [InlineData("+1", 0)]
    public void Without_a_gap_there_is_no_turn(string gap, int findings) =>
        Verify.Rule("flow-facing").Given(Fight.Of("left-lead Bruno@12/250 Wanda@3/350", $"cross-right > parry-down-left {{head-drops}} ; Wanda: {gap} !swing-left > outside-block-right {{limb-stopped}}")).Finds(findings, 2);

    [Fact]
    public void Whoever_is_bound_does_not_turn() =>
        Verify.Rule("flow-facing").Given(Fight.Of("square Bruno@12/150 Wanda@1/300", "lapel-grab > seized-in-front {keeps-grip} ; Wanda: +6 swing-right > gripper-swing-right {limb-stopped}"))
            .Finds(1, 2).Says("the grip allows 0°");

    [Fact]
    public void Whoever_is_held_by_a_wrist_turns_thirty_degrees_at_most() =>
        Verify.Rule("flow-facing").Given(Fight.Of("square Bruno@12/150 Wanda@4/300", "wrist-grab-same-right > wrist-taken-left {keeps-grip} ; Wanda: +6 !front-kick-right > step-back {falls-short}"))
            .Finds(1, 2).Measures(60, 30, "degrees");
}

using Generator.Domain;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Rules;

public sealed class GripTests
{
    private const string Seized = "lapel-grab > seized-in-front {keeps-grip} ; ";

    private const string Caught = "cross-right > wrist-catch-left {arm-caught} ; ";

    private static Found Judge(string moves) => Verify.Rule("grip").Given(Fight.Of("square Bruno@12/250 Wanda@2/350", moves));

    [Fact]
    [Fails("grip")]
    public void Nobody_blocks_one_attacker_while_another_holds_the_lapels() =>
        Judge(Seized + "Wanda: +1 swing-left > outside-block-right {limb-stopped} ; Bruno: +2 wedge-up {limb-swept-out}").Finds(1, 2).As(Severity.Broken).Says("Bruno grips Ines from the front");

    [Theory]
    [Passes("grip")]
    [InlineData(Seized + "wedge-up {limb-swept-out}")]
    [InlineData(Seized + "knee-right {folds}")]
    [InlineData(Caught + "hip-throw-right {thrown-over}")]
    [InlineData(Caught + "Wanda: +1 swing-left > hold-and-block-right {limb-stopped} ; Bruno: pull-past-left {rolls-through}")]
    public void Techniques_made_for_it_work(string moves) => Judge(moves).FindsNothing();

    [Fact]
    public void A_hold_must_end() => Judge(Caught + "straight-arm-lock-left {bends-over-lock}").Finds(1, 0).Says("Ines still holds Bruno").Concerns("Bruno");

    [Fact]
    public void So_must_a_grip() => Judge("lapel-grab > seized-in-front {keeps-grip}").Finds(1, 0).Says("Bruno still grips Ines");

    [Fact]
    public void A_held_hand_does_not_jab() =>
        Judge("wrist-grab-same-right > wrist-taken-left {keeps-grip} ; jab-left {head-back}").Says("Bruno holds Ines's hand").Finds(1, 2);

    [Fact]
    public void Nobody_is_held_by_a_hand_that_goes_elsewhere() =>
        Judge(Caught + "elbow-down-left {jolts-in-hold}").Says("lets go of Bruno, who reacts as if still held").Finds(1, 2);

    [Fact]
    public void A_held_attacker_does_not_attack() => Judge(Caught + "swing-left > duck {overswings}").Finds(1, 2).Says("is held by Ines");

    [Fact]
    public void A_gripping_attacker_does_not_attack() => Judge(Seized + "swing-left > duck {overswings}").Finds(1, 2).Says("still grips Ines");

    [Fact]
    public void An_escape_needs_a_grip() => Judge("swing-right > outside-block-left {limb-stopped} ; +1 wedge-up {limb-swept-out}").Finds(1, 2).Says("nobody grips Ines");

    /// <summary>Pushing Wanda off takes both hands, and the left one has Bruno.</summary>
    [Fact]
    public void A_held_attacker_is_not_simply_forgotten() =>
        Judge(Caught + "Wanda: +1 jab-right > slip-left {falls-short} ; collar-hold-right {held-fast} ; release-push {staggers-back} ; Bruno: pull-past-left {rolls-through}").Finds(1, 4).Says("Bruno, who is simply forgotten");

    /// <summary>Dropping out of Wanda's hug frees both hands, and Bruno still has the left wrist.</summary>
    [Fact]
    public void Nor_is_a_gripping_one() =>
        Verify.Rule("grip").Given(Fight.Of("square Bruno@12/250 Wanda@6/150", "wrist-grab-same-right > wrist-taken-left {keeps-grip} ; Wanda: +1 !bear-hug-rear > drop-out {grip-breaks}"))
            .Finds(1, 2).Says("takes the hand that Bruno grips");
}

using Generator.Domain;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Rules;

public sealed class InReachTests
{
    private static Found Judge(string moves) => Verify.Rule("in-reach").Given(Fight.Of("right-lead Bruno@12/250", moves));

    /// <summary>The choke ends at 1.05 arms of 68.64 cm, the wedge gives 15 cm: 87. The kick's band starts at 1.55 legs of 86.24 cm, 134, and steps back 45: 89.</summary>
    [Fact]
    [Fails("in-reach")]
    public void A_head_kick_at_arms_length_is_unsafe() =>
        Judge("choke-front > wedge {limb-swept-out} ; high-round-kick-left {head-turns}").Finds(1, 2).As(Severity.Unsafe).Measures(0.87m, 0.89m, "m");

    [Fact]
    [Passes("in-reach")]
    public void A_body_kick_from_there_is_well() =>
        Judge("choke-front > wedge {limb-swept-out} ; mid-round-kick-left {folds}").FindsNothing();

    /// <summary>A rush is met at 0.95 legs, 82 cm, and goes back 80, 40 of which the hero follows; a body punch ends at 1.15 arms, 78, and steps in 40: 158.</summary>
    [Fact]
    public void A_body_punch_at_somebody_sent_back_falls_short() =>
        Judge("rush > stop-kick-right {staggers-back} ; +1 body-punch-left {folds}").Finds(1, 2).As(Severity.Broken).Measures(1.62m, 1.58m, "m");

    /// <summary>A jab ends at 1.75 arms, 120, and steps in 40: 160, 2 cm too little without following.</summary>
    [Fact]
    public void A_jab_follows_somebody_sent_back() =>
        Judge("rush > stop-kick-right {staggers-back} ; +1 jab-left {head-back}").FindsNothing();

    [Fact]
    public void Whoever_comes_nearer_or_opens_again_is_not_followed()
    {
        var follows = Fight.Of("right-lead Bruno@12/250", "rush > stop-kick-right {staggers-back} ; +1 jab-left {head-back} ; +1 body-punch-right {folds}");
        Verify.Rule("in-reach").Given(follows).Finds(1, 3);
    }

    [Fact]
    public void A_longer_arm_widens_the_band_of_a_miss()
    {
        var fight = Fight.Of("right-lead Bruno@12/250", "rush > stop-kick-right {staggers-back} ; +1 jab-left {head-back}");
        Verify.Rule("in-reach").Given(fight.WithAttacker(0, b => b with { Arm = new Centimetres(75) })).FindsNothing();
    }

    [Fact]
    public void A_pause_without_a_target_has_no_distance() => Judge("swing-right > outside-block-left {limb-stopped} ; catch-breath").FindsNothing();
}

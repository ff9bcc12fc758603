using Generator.Domain;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Rules;

public sealed class OneContactTests
{
    private static Found Judge(string moves) => Verify.Rule("one-contact").Given(Fight.Of("left-lead Bruno@12/150 Wanda@2/150 Piet@10/150", moves));

    [Fact]
    [Fails("one-contact")]
    public void Two_attacks_land_together() =>
        Judge("swing-right > outside-block-left {limb-stopped} ; Wanda: & cross-left >").Finds(1, 2).As(Severity.Unsafe).Measures(0, 1, "counts").Concerns("Bruno, Wanda");

    [Fact]
    [Passes("one-contact")]
    public void A_count_apart_they_do_not() =>
        Judge("swing-right > outside-block-left {limb-stopped} ; Wanda: cross-left > inside-parry-right {limb-swept-in}").FindsNothing();

    [Fact]
    public void Half_a_count_apart_they_do() => Judge("swing-right > outside-block-left {limb-stopped} ; Wanda: -1 cross-left >").Finds(1, 2).Measures(0.5m, 1, "counts");

    [Fact]
    public void Three_together_are_told_two_by_two() =>
        Judge("swing-right > ; Wanda: & cross-left > ; Piet: & cross-right >").Says("Bruno and Wanda").Says("Bruno and Piet").Says("Wanda and Piet");

    [Fact]
    public void One_attacker_may_combine() => Judge("jab-right > slip-left {falls-short} ; & cross-right >").FindsNothing();
}

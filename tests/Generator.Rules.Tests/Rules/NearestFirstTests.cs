using Generator.Domain;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Rules;

/// <summary>At 2 m/s and 100 counts a minute a half count covers 60 cm; the last 90 cm need no walk.</summary>
public sealed class NearestFirstTests
{
    private static Found Judge(string start, string moves) => Verify.Rule("nearest-first").Given(Fight.Of(start, moves));

    [Fact]
    [Fails("nearest-first")]
    public void Who_stands_nearest_goes_first() =>
        Judge("left-lead Bruno@12/510 Wanda@3/150", "swing-right > outside-block-left {limb-stopped}").Finds(1, 1).As(Severity.Broken).Measures(3, 1, "counts").Concerns("Bruno, Wanda");

    [Fact]
    [Passes("nearest-first")]
    public void And_does() => Judge("left-lead Bruno@12/150 Wanda@3/510", "swing-right > outside-block-left {limb-stopped}").FindsNothing();

    [Theory]
    [InlineData(270, 0)]
    [InlineData(271, 1)]
    public void One_count_is_near_enough(int distance, int findings) =>
        Judge($"left-lead Bruno@12/{distance} Wanda@3/150", "swing-right > outside-block-left {limb-stopped}").Finds(findings, 1);

    [Fact]
    public void Going_on_with_the_same_attacker_opens_nothing() =>
        Judge("left-lead Bruno@12/150 Wanda@3/200", "swing-right > outside-block-left {limb-stopped} ; cross-right {head-back} ; body-hook-left {folds}").FindsNothing();

    [Fact]
    public void Coming_again_opens_an_exchange() =>
        Judge("left-lead Bruno@12/150 Wanda@3/200", "swing-right > outside-block-left {limb-stopped} ; +20 swing-right > outside-block-left {limb-stopped}").Finds(1, 2);

    [Fact]
    public void Somebody_held_may_be_taken_on_at_any_time() =>
        Judge(
            "square Bruno@12/150 Wanda@2/200 Piet@9/210",
            "cross-right > wrist-catch-left {arm-caught} ; Wanda: +1 swing-left > hold-and-block-right {limb-stopped} ; Bruno: pull-past-left {rolls-through}").FindsNothing();

    [Fact]
    public void Whoever_has_not_come_in_yet_waits() =>
        Judge("left-lead Bruno@12/510 Wanda@3/150/20", "swing-right > outside-block-left {limb-stopped}").FindsNothing();

    [Fact]
    public void Who_has_stood_ready_longest_goes_first() =>
        Judge(
            "left-lead Bruno@12/150 Wanda@3/150",
            "swing-right > outside-block-left {limb-stopped} ; +8 swing-right > outside-block-left {limb-stopped}").Finds(1, 2);
}

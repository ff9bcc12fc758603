using Generator.Domain;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Rules;

public sealed class NoWaitingTests
{
    private static Fight Waiting(string placement, int gap) =>
        Fight.Of($"left-lead Bruno@12/150 {placement}", $"swing-right > outside-block-left {{limb-stopped}} ; finishing-cross-right {{out-flat}} ; Wanda: +{gap} swing-right > outside-block-left {{limb-stopped}} ; finishing-cross-right {{out-flat}}");

    /// <summary>Wanda could land at 1, and does at 4 + 6 + 2 = 12: 11 half counts, 3 beyond a patience of 8.</summary>
    [Fact]
    [Fails("no-waiting")]
    public void Somebody_within_reach_waits_too_long() =>
        Verify.Rule("no-waiting").Given(Waiting("Wanda@2/150", 6)).Finds(1, 3).As(Severity.Rough).Costs(3).Measures(5.5m, 4, "counts");

    [Fact]
    [Passes("no-waiting")]
    public void Four_counts_are_no_wait() => Verify.Rule("no-waiting").Given(Waiting("Wanda@2/150", 3)).FindsNothing();

    [Theory]
    [InlineData("Wanda@2/330")]
    [InlineData("Wanda@2/150/3")]
    public void Farther_off_or_later_in_nobody_waits(string placement) => Verify.Rule("no-waiting").Given(Waiting(placement, 6)).FindsNothing();

    [Fact]
    public void The_brief_sets_the_patience() =>
        Verify.Rule("no-waiting").Given(Waiting("Wanda@2/150", 6).With(b => b with { Pace = b.Pace with { Patience = new HalfCounts(10) } })).Finds(1, 3).Costs(1);

    [Fact]
    public void Who_is_never_taken_on_is_told_at_the_end() =>
        Verify.Rule("no-waiting").Given(Fight.Of("left-lead Bruno@12/150 Wanda@2/150", "swing-right > outside-block-left {limb-stopped} ; finishing-cross-right {out-flat} ; +6 look-about-right")).Finds(1, 0).Concerns("Wanda").Costs(4);

    /// <summary>Half counts lingered, and the points that they cost: two counts after a mere block or dodge, the hero's or their own, the brief's six after a hit or whatever brings them down.</summary>
    [Theory]
    [InlineData("swing-right > outside-block-left {limb-stopped}", 4, 0)]
    [InlineData("swing-right > outside-block-left {limb-stopped}", 7, 3)]
    [InlineData("swing-right > duck {overswings}", 5, 1)]
    [InlineData("swing-right > outside-block-left {limb-stopped} ; jab-left {leans-from-blow}", 4, 0)]
    [InlineData("swing-right > outside-block-left {limb-stopped} ; jab-left {leans-from-blow}", 7, 3)]
    [InlineData("swing-right > outside-block-left {limb-stopped} ; jab-left {head-turns}", 12, 0)]
    [InlineData("swing-right > outside-block-left {limb-stopped} ; jab-left {head-turns}", 13, 1)]
    public void Who_was_only_blocked_does_not_linger(string moves, int linger, int points) =>
        Assert.Equal(points, Fight.Of("left-lead Bruno@12/150", $"{moves} ~{linger}").Audit().Points);

    [Fact]
    public void A_linger_without_cause_is_told_with_what_is_allowed() =>
        Verify.Rule("no-waiting").Given(Fight.Of("left-lead Bruno@12/150", "swing-right > outside-block-left {limb-stopped} ~7")).Finds(1, 1).As(Severity.Rough).Costs(3).Measures(3.5m, 2, "counts");
}

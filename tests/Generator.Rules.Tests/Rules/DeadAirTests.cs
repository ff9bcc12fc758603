using Generator.Domain;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Rules;

public sealed class DeadAirTests
{
    private static Fight With(int gap) => Fight.Of("left-lead Bruno@12/250", $"swing-right > outside-block-left {{limb-stopped}} ; +{gap} swing-right > outside-block-left {{limb-stopped}}");

    [Theory]
    [Fails("dead-air")]
    [InlineData(5, 1)]
    [InlineData(12, 8)]
    public void More_than_two_counts_of_nothing_cost_points(int gap, int points) =>
        Verify.Rule("dead-air").Given(With(gap)).Finds(1, 2).As(Severity.Rough).Costs(points).Measures(gap / 2m, 2, "counts");

    [Theory]
    [Passes("dead-air")]
    [InlineData(0)]
    [InlineData(4)]
    public void Two_counts_are_a_breath(int gap) => Verify.Rule("dead-air").Given(With(gap)).FindsNothing();

    [Fact]
    public void More_than_six_break_the_routine() => Verify.Rule("dead-air").Given(With(13)).Finds(1, 2).As(Severity.Broken).Measures(6.5m, 6, "counts");

    [Fact]
    public void The_brief_sets_the_longest_pause() =>
        Verify.Rule("dead-air").Given(With(5).With(b => b with { Pace = b.Pace with { LongestPause = new HalfCounts(5) } })).FindsNothing();

    /// <summary>Without a length it may be a part of a longer fight. With one, Bruno could be there from 2.50 m within 3 half counts, and 12 more may pass.</summary>
    [Theory]
    [InlineData(null, null, 200, 0)]
    [InlineData(24, null, 15, 0)]
    [InlineData(24, null, 16, 1)]
    [InlineData(null, 1, 15, 0)]
    [InlineData(null, 1, 16, 1)]
    public void Before_the_first_move_nothing_is_dead_unless_the_brief_says_how_long_the_fight_is(int? counts, int? moves, int gap, int findings)
    {
        var found = Verify.Rule("dead-air").Given(Fight.Of("left-lead Bruno@12/250", $"+{gap} swing-right > outside-block-left {{limb-stopped}}").With(b => b with { Length = counts is null && moves is null ? null : new Length(counts, moves, 4) })).Finds(findings, 1);
        _ = findings == 0 ? found : found.As(Severity.Broken);
    }

    /// <summary>Whoever the brief brings in later is waited for.</summary>
    [Fact]
    public void Who_comes_in_later_by_the_brief_is_waited_for() =>
        Verify.Rule("dead-air").Given(Fight.Of("left-lead Bruno@12/250/20", "+40 swing-right > outside-block-left {limb-stopped}").With(b => b with { Length = new Length(24, null, 4), Attackers = [b.Attackers[0] with { Entrance = HalfCounts.FromCounts(20) }] })).FindsNothing();

    [Fact]
    public void A_pause_of_the_story_fills_the_gap() =>
        Verify.Rule("dead-air").Given(Fight.Of("left-lead Bruno@12/250", "swing-right > outside-block-left {limb-stopped} ; +2 catch-breath ; +2 swing-right > outside-block-left {limb-stopped}")).FindsNothing();
}

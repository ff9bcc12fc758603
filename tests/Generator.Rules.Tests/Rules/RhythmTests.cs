using Generator.Domain;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Rules;

/// <summary>An attack is met a count after its move starts; blocks, jabs and crosses last one.</summary>
public sealed class RhythmTests
{
    private const string Long = "swing-right > outside-block-left {limb-stopped} ; cross-right {head-back} ; jab-left {rocks-back} ; cross-right {head-back} ; jab-left {rocks-back}";

    private static Found Judge(string moves) =>
        Verify.Rule("rhythm").Given(Fight.Of("left-lead Bruno@12/250 Wanda@2/250", moves).With(b => b with { Judged = [FightRule.Rhythm] }));

    /// <summary>So many exchanges of a block and a cross, a count of rest before each, one after the other on both.</summary>
    private static string Queue(int exchanges) => string.Join(" ; ", Enumerable.Range(0, exchanges).Select(i => (i % 2 == 0 ? "Bruno" : "Wanda") + ": +2 swing-right > outside-block-left {limb-stopped} ; cross-right {head-back}"));

    /// <summary>No exchange of five moves, and no flurry: four points; and one for each that is the fourth or more alike.</summary>
    [Theory]
    [Fails("rhythm")]
    [InlineData(3, 4)]
    [InlineData(4, 5)]
    [InlineData(6, 7)]
    public void A_queue(int exchanges, int points) => Judge(Queue(exchanges)).As(Severity.Rough).Costs(points);

    [Fact]
    public void The_fourth_of_one_length_is_told_where_the_next_begins() => Judge(Queue(5)).Says("The exchange before this one has 2 moves, as have the 3 before it").Measures(4, 3, "exchanges");

    [Fact]
    [Passes("rhythm")]
    public void Two_long_ones_with_quick_contacts_and_a_rest_after_each() => Judge("Bruno: " + Long + " ; Wanda: +5 " + Long).FindsNothing();

    /// <summary>Without the rest between them the quick contacts are one flurry, which ends with the fight.</summary>
    [Fact]
    public void Without_a_rest_it_is_one_flurry() => Judge("Bruno: " + Long + " ; Wanda: " + Long).Costs(1).Measures(1, 2, "flurries");

    [Fact]
    public void Without_being_asked_it_says_nothing() =>
        Verify.Rule("rhythm").Given(Fight.Of("left-lead Bruno@12/250 Wanda@2/250", Queue(6))).FindsNothing();
}

using Generator.Domain;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Rules;

public sealed class PurposeTests
{
    private static Found Judge(string start, string moves, params IReadOnlyList<FightRule> judged) =>
        Verify.Rule("purpose").Given(Fight.Of(start, moves).With(b => b with { Judged = judged.Count > 0 ? judged : [FightRule.Purpose] }));

    [Theory]
    [Fails("purpose")]
    [InlineData("Wanda: jab-left {rocks-back}", 1, 1)]
    [InlineData("Wanda: walk-in > jab-left {rocks-back}", 1, 1)]
    [InlineData("Bruno: tackle > sprawl {front-fall} ; knee-pin-right {pinned} ; let-go {left-lying}", 3, 2)]
    public void Hitting_somebody_who_does_nothing_and_holding_for_nothing(string moves, int move, int points) =>
        Judge("square Bruno@12/250 Wanda@2/250", moves).Finds(1, move).As(Severity.Rough).Costs(points);

    [Theory]
    [InlineData("Wanda: +6 !swing-right > duck {overswings}", 100)]
    [InlineData("Bruno: swing-right > duck {overswings} ; Wanda: +6 !swing-right > duck {overswings}", 50)]
    public void More_than_two_in_five_so_far_from_out_of_sight(string moves, int percent) =>
        Judge("left-lead Bruno@12/250 Wanda@6/250", moves).Costs(1).Measures(percent, 40, "%").Says("out of sight");

    [Theory]
    [Passes("purpose")]
    [InlineData("Bruno: swing-right > outside-block-left {limb-stopped} ; Bruno: +6 swing-right > outside-block-left {limb-stopped} ; Wanda@6: +6 !swing-right > duck {overswings}")]
    [InlineData("Wanda: swing-right > outside-block-left {limb-stopped} ; jab-left {rocks-back}")]
    [InlineData("Bruno: tackle > sprawl {front-fall} ; knee-pin-right {pinned} ; ground-punch-right {jolts-in-hold} ; let-go {left-lying}")]
    [InlineData("Bruno: tackle > sprawl {front-fall} ; knee-pin-right {pinned} ; Wanda: +2 swing-right > duck {overswings} ; Bruno: let-go {left-lying}")]
    public void What_leads_to_something(string moves) => Judge("square Bruno@12/250 Wanda@2/250", moves).FindsNothing();

    [Fact]
    public void It_is_off_where_the_brief_is_judged_by_others() => Judge("left-lead Wanda@2/250", "Wanda: jab-left {rocks-back}", FightRule.Story).FindsNothing();
}

using Generator.Domain;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Rules;

/// <summary>Weights: jab 1, cross 2, swing 4, finishing hook 4, finishing uppercut 5; running off 2.</summary>
public sealed class ClimaxTests
{
    private static readonly IReadOnlyList<Act> Acts = [new(60, HeroStanding.Even), new(40, HeroStanding.Even)];

    private static Found Judge(string moves, IReadOnlyList<Act>? acts = null) =>
        Verify.Rule("climax").Given(Fight.Of("left-lead Bruno@12/250 Wanda@2/250 Piet@10/250", moves).With(b => b with { Acts = acts ?? Acts, Length = new Domain.Length(null, 6, 6) }));

    [Theory]
    [Fails("climax")]
    [InlineData("Wanda: finishing-uppercut-right {out-flat} ; Bruno: jab-left ; cross-right ; finishing-hook-left {out-crumples}", 1, 4, 5, "weight")]
    [InlineData("Wanda: jab-left ; Bruno: cross-left ; finishing-uppercut-right {out-flat}", 1, 2, 3, "moves")]
    public void A_light_end_or_a_short_last_fight(string moves, int points, int measured, int allowed, string unit) =>
        Judge(moves).Costs(points).Measures(measured, allowed, unit);

    [Fact]
    public void The_second_who_runs_off_costs_a_point() =>
        Judge("Wanda: run-off-right {out-flees} ; Piet: run-off-right {out-flees} ; Bruno: jab-left ; cross-right ; finishing-uppercut-right {out-flat}").Finds(1, 2).Costs(1).Measures(2, 1, "attackers");

    [Theory]
    [Passes("climax")]
    [InlineData("Wanda: swing-right ; Bruno: jab-left ; cross-right ; finishing-uppercut-right {out-flat}")]
    [InlineData("Wanda: run-off-right {out-flees} ; Bruno: jab-left ; catch-breath ; cross-right ; finishing-uppercut-right {out-flat}")]
    [InlineData("Wanda: swing-right ; Bruno: jab-left")]
    public void It_ends_on_the_peak_with_a_last_fight(string moves) => Judge(moves).FindsNothing();

    [Fact]
    public void Without_acts_nothing_is_asked() => Judge("Wanda: swing-right ; Bruno: run-off-right {out-flees}", []).FindsNothing();
}

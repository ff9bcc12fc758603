using Generator.Domain;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Rules;

public sealed class EchoTests
{
    private const string Hit = "Bruno: swing-right > takes-face-hit {presses-on}";

    private static Found Judge(string moves, string? signature = null) =>
        Verify.Rule("echo").Given(Fight.Of("left-lead Bruno@12/250 Wanda@2/250", moves).With(b => b with { Judged = [FightRule.Echo], Signature = signature }));

    [Theory]
    [Fails("echo")]
    [InlineData(Hit)]
    [InlineData(Hit + " ; Wanda: +6 front-kick-right > parry-down-left {limb-swept-in}")]
    [InlineData("Wanda: swing-left > outside-block-right {limb-stopped} ; +6 " + "swing-right > takes-face-hit {presses-on}")]
    [InlineData(Hit + " ; Bruno: +6 swing-right > takes-face-hit {presses-on}")]
    public void What_got_through_is_not_beaten_later(string moves) => Judge(moves).Finds(1, 0).Costs(2);

    [Theory]
    [Passes("echo")]
    [InlineData(Hit + " ; Wanda: +6 swing-left > outside-block-right {limb-stopped}")]
    [InlineData("Bruno: swing-right > outside-block-left {limb-stopped}")]
    public void It_is_beaten_or_nothing_got_through(string moves) => Judge(moves).FindsNothing();

    [Theory]
    [InlineData("cross-right {head-back}", 2)]
    [InlineData("cross-right {head-back} ; jab-left ; cross-right {head-back}", 1)]
    [InlineData("cross-right {head-back} ; jab-left ; cross-left {rocks-back}", 0)]
    [InlineData("cross-right {head-back} ; cross-left {rocks-back} ; cross-right {head-back} ; cross-left {rocks-back}", 1)]
    [InlineData("jab-left", 4)]
    public void A_signature_returns_and_ends_otherwise(string moves, int points) => Judge("Bruno: " + moves, "cross").Costs(points);

    [Theory]
    [InlineData("outside-block-left {limb-stopped}", 1)]
    [InlineData("duck {overswings}", 0)]
    public void So_may_an_attack(string answer, int points) => Judge($"Bruno: swing-right > outside-block-left {{limb-stopped}} ; +9 swing-right > {answer}", "swing-right").Costs(points);
}

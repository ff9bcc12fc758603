using Generator.Domain;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Rules;

/// <summary>Bruno is a brawler (swings, punches), Wanda a kicker.</summary>
public sealed class MannerTests
{
    private const string Bruno = "Bruno: swing-right > outside-block-left {limb-stopped}";
    private const string Wanda = "Wanda: +4 front-kick-right > parry-down-left {limb-swept-in}";

    private static Found Judge(string moves, Func<Brief, Brief>? change = null) =>
        Verify.Rule("manner").Given(Fight.Of("left-lead Bruno@12/250 Wanda@2/250", moves).WithAttacker(0, a => a with { Manner = "brawler" }).WithAttacker(1, a => a with { Manner = "kicker" }).With(change ?? (b => b)));

    [Theory]
    [Fails("manner")]
    [InlineData("Bruno: front-kick-right > parry-down-left {limb-swept-in} ; " + Wanda, 1)]
    [InlineData(Bruno + " ; Wanda: +4 swing-right > outside-block-left {limb-stopped}", 2)]
    [InlineData(Bruno + " ; Wanda: +4 swing-right > takes-face-hit {presses-on}", 2)]
    public void Somebody_comes_with_what_is_not_theirs(string moves, int move) => Judge(moves).Finds(1, move).As(Severity.Rough).Costs(1).Says("out of the manner");

    [Fact]
    [Passes("manner")]
    public void Everybody_comes_with_what_is_theirs() => Judge(Bruno + " ; cross-right {head-back} ; " + Wanda).FindsNothing();

    [Fact]
    public void A_hero_of_one_family_works_with_it() =>
        Judge(Bruno + " ; cross-right {head-back} ; " + Wanda, b => b with { Hero = b.Hero with { Manner = "kicker" } }).Finds(1, 2).Costs(1).Says("Cross right is out of the manner of Ines");

    [Theory]
    [InlineData("cross", 2)]
    [InlineData("cross-right", 2)]
    [InlineData("strike", 2)]
    [InlineData("swing", 1)]
    [InlineData("kick", 3)]
    public void What_is_avoided_costs_three(string word, int move) => Judge(Bruno + " ; cross-right {head-back} ; " + Wanda, b => b with { Avoid = [word] }).Finds(1, move).Costs(3);

    [Fact]
    public void What_is_favoured_and_never_comes_costs_two() =>
        Judge(Bruno + " ; cross-right {head-back} ; " + Wanda, b => b with { Favour = ["cross", "hip-throw", "punch", "kick"] }).Finds(2, 0).Costs(4).Says("hip throw, and it never comes");

    [Fact]
    public void Nobody_without_a_manner_is_out_of_it() =>
        Verify.Rule("manner").Given(Fight.Of("left-lead Bruno@12/250", "Bruno: front-kick-right > parry-down-left {limb-swept-in}").With(b => b with { Judged = [FightRule.Manner] })).FindsNothing();
}

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

    private static Found Boxer(string moves) =>
        Verify.Rule("manner").Given(Fight.Of("left-lead Bruno@12/250 Wanda@2/250", moves).WithAttacker(0, a => a with { Manner = "boxer" }));

    /// <summary>Jab and cross a count apart by contact, the first only slipped.</summary>
    [Theory]
    [Passes("manner")]
    [InlineData("Bruno: jab-left > outside-block-right {comes-again} ; Bruno: cross-right > slip-left {comes-again}")]
    [InlineData("Bruno: jab-left > takes-face-hit {presses-on} ; Bruno: cross-right > slip-left {comes-again}")]
    [InlineData("Bruno: jab-left > outside-block-right {comes-again} ; Bruno: cross-right > takes-face-hit {presses-on}")]
    [InlineData("Bruno: jab-right > outside-block-left {comes-again} ; Bruno: cross-left > slip-right {comes-again} ; Bruno: +6 uppercut-right > inside-parry-left {limb-swept-in}")]
    public void A_boxer_throws_a_combination(string moves) => Boxer(moves).FindsNothing();

    [Theory]
    [Fails("manner")]
    [InlineData("Bruno: jab-left > outside-block-right {comes-again} ; Bruno: +1 cross-right > slip-left {comes-again}")]
    [InlineData("Bruno: jab-left > outside-block-right {limb-stopped} ; Bruno: cross-right > slip-left {comes-again}")]
    [InlineData("Bruno: jab-left > outside-block-right {comes-again} ; Bruno: cross-left > slip-right {comes-again}")]
    [InlineData("Bruno: jab-left > outside-block-right {comes-again} ; Wanda: cross-right > slip-left {comes-again}")]
    [InlineData("Bruno: cross-right > slip-left {comes-again}")]
    public void A_boxer_who_throws_none_costs_two(string moves) => Boxer(moves).Finds(1, 0).Costs(2).Says("Bruno throws no combination");

    [Fact]
    public void Nobody_without_a_manner_is_out_of_it() =>
        Verify.Rule("manner").Given(Fight.Of("left-lead Bruno@12/250", "Bruno: front-kick-right > parry-down-left {limb-swept-in}").With(b => b with { Judged = [FightRule.Manner] })).FindsNothing();
}

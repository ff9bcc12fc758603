using Generator.Domain;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Rules;

public sealed class AbleTests
{
    private const string Fall = "swing-right > outside-block-left {limb-stopped} ; step-punch-right {back-fall}";

    private static Found Judge(Fight fight) => Verify.Rule("able").Given(fight);

    [Fact]
    [Fails("able")]
    public void A_novice_does_not_jump() =>
        Judge(Fight.Of("left-lead Bruno@12/250 hero=novice", "jab-right > slip-left {falls-short} ; jumping-front-kick-right {staggers-back}")).Finds(1, 2).As(Severity.Unsafe).Concerns("Ines");

    [Fact]
    [Passes("able")]
    public void A_stunt_performer_does() =>
        Judge(Fight.Of("left-lead Bruno@12/250", "jab-right > slip-left {falls-short} ; jumping-front-kick-right {staggers-back}")).FindsNothing();

    [Theory]
    [InlineData("hard", 1)]
    [InlineData("wet", 1)]
    [InlineData("sprung", 0)]
    [InlineData("matted", 0)]
    public void A_back_fall_needs_mats(string surface, int findings) => Judge(Fight.Of($"left-lead Bruno@12/250 surface={surface}", Fall)).Finds(findings, 2);

    [Theory]
    [InlineData("no-back-fall", 1)]
    [InlineData("no-fall", 1)]
    [InlineData("no-side-fall", 0)]
    public void A_limit_forbids_its_fall(string limit, int findings) => Judge(Fight.Of("left-lead Bruno@12/250", Fall).WithAttacker(0, b => b with { Limits = [limit] })).Finds(findings, 2);

    [Theory]
    [InlineData("bare-back", 1)]
    [InlineData("heels", 0)]
    public void So_does_wardrobe(string garment, int findings) => Judge(Fight.Of("left-lead Bruno@12/250", Fall).WithAttacker(0, b => b with { Wardrobe = [garment] })).Finds(findings, 2);

    [Fact]
    public void A_hero_limit_forbids_the_hand() => Judge(Fight.Of("left-lead Bruno@12/250", Fall).WithHero(h => h with { Limits = ["no-left-hand"] })).Finds(1, 1).Concerns("Ines");

    [Fact]
    public void An_attackers_limit_forbids_the_attack() => Judge(Fight.Of("left-lead Bruno@12/250", Fall).WithAttacker(0, b => b with { Limits = ["no-right-hand"] })).Finds(1, 1).Concerns("Bruno");

    [Fact]
    public void Each_person_is_told_once_a_move() =>
        Judge(Fight.Of("left-lead Bruno@12/250 hero=novice surface=hard", "swing-right > outside-block-left {limb-stopped} ; throw-finish-right {out-over}")
            .WithAttacker(0, b => b with { Skill = Skill.Novice, Limits = ["no-thrown-over-fall"] })).Finds(2, 2).Says("Ines is novice").Says("Bruno is novice");

    [Fact]
    public void Who_shares_the_reaction_must_be_able_too()
    {
        var fight = Fight.Of(
            "square Bruno@12/250 Wanda@12:30/350",
            "swing-right > outside-block-left {limb-stopped} ; +1 double-palm {crashes-into} ; heads-together {out-crumples}");
        Judge(fight).FindsNothing();
        Judge(fight.WithAttacker(1, w => w with { Limits = ["no-side-fall"] })).Finds(1, 3).Concerns("Wanda");
    }
}

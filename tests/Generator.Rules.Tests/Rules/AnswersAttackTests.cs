using Generator.Domain;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Rules;

public sealed class AnswersAttackTests
{
    private static Found Judge(string moves, string start = "left-lead Bruno@12/250 Wanda@2/250") => Verify.Rule("answers-attack").Given(Fight.Of(start, moves));

    [Fact]
    [Fails("answers-attack")]
    public void A_left_block_does_not_guard_the_right() =>
        Judge("swing-left > outside-block-left {limb-stopped}").Finds(1, 1).As(Severity.Broken).Says("comes at the hero's right");

    [Theory]
    [Passes("answers-attack")]
    [InlineData("swing-left > outside-block-right {limb-stopped}")]
    [InlineData("swing-left > duck {overswings}")]
    [InlineData("wrist-grab-same-right > wrist-roll-left {arm-caught}")]
    [InlineData("walk-in > cross-right {head-back}")]
    [InlineData("tackle > tackled-down {keeps-grip}")]
    public void What_lists_the_line_answers_it(string moves) => Judge(moves).FindsNothing();

    [Theory]
    [InlineData("round-kick-low-right > duck {overswings}")]
    [InlineData("wrist-grab-cross-right > wrist-roll-left {arm-caught}")]
    [InlineData("walk-in > uppercut-right {head-back}")]
    [InlineData("swing-right > cross-right {head-back}")]
    [InlineData("swing-right > catch-breath")]
    public void What_does_not_list_the_line_leaves_it_unanswered(string moves) => Judge(moves).Finds(1, 1);

    [Fact]
    public void A_jab_finds_no_kneeling_hero() =>
        Judge("swing-right > drop-to-knee-left {overswings} ; +12 jab-right > rising-block-left {limb-stopped}").Finds(1, 2).Says("at its level");

    [Theory]
    [Passes("answers-attack")]
    [InlineData("knee-punch-right > kneeling-turn-aside-left {caught-on-knees}")]
    [InlineData("knee-side-blow-right > kneeling-block-left {rocks-on-knees} ; +14 swing-right > bow-under {overswings}")]
    public void Whoever_opens_on_a_knee_attacks_from_there_first(string moves) => Judge(moves, "kneeling-left Bruno@12/100/left-knee").FindsNothing();

    [Theory]
    [Fails("answers-attack")]
    [InlineData("swing-right > bow-under {overswings}", 1, "is thrown standing")]
    [InlineData("knee-side-blow-right > kneeling-block-left {rocks-on-knees} ; +14 knee-side-blow-right > kneeling-block-left {rocks-on-knees}", 2, "off the knee by now")]
    [InlineData("Bruno@1: knee-punch-right > kneeling-turn-aside-left {caught-on-knees}", 1, "does not walk round")]
    public void And_neither_standing_first_nor_from_there_again(string moves, int move, string says) =>
        Judge(moves, "kneeling-left Bruno@12/100/left-knee").Finds(1, move).As(Severity.Broken).Says(says);

    /// <summary>A slap comes from the front. The spinning block takes it at 8 o'clock without a turn.</summary>
    [Fact]
    public void A_slap_does_not_come_from_behind() =>
        Judge("!slap-right > turning-block-left {limb-stopped}", "left-lead Bruno@8/250").Finds(1, 1).Says("8 o'clock");

    [Fact]
    public void Nothing_answers_a_last_attack() => Judge("swing-right > outside-block-left {limb-stopped} ; +4 swing-right >").Finds(1, 2).Says("Nothing answers Bruno's swing right");

    [Fact]
    public void Nothing_answers_an_attack_before_others() => Judge("swing-right > ; Wanda: +8 swing-left > duck {overswings}").Finds(1, 1);

    [Theory]
    [InlineData("swing-right > outside-block-left {limb-stopped} ; Wanda: & cross-left >")]
    [InlineData("swing-right > ; Wanda: & cross-left > inside-parry-right {limb-swept-in}")]
    [InlineData("swing-right > ; Wanda: +1 cross-left > inside-parry-right {limb-swept-in}")]
    public void Of_two_attacks_together_another_rule_speaks(string moves) => Judge(moves).FindsNothing();

    [Fact]
    public void A_count_later_it_is_an_attack_of_its_own() =>
        Judge("swing-right > ; Wanda: +2 cross-left > inside-parry-right {limb-swept-in}").Finds(1, 1);
}

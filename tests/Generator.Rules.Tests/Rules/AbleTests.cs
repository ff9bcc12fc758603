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

    /// <summary>X, y, width and depth of the mat; Bruno lies from 6.00, 7.37 m to 6.00, 8.63 m.</summary>
    [Theory]
    [InlineData("hard", "500 600 200 400", 0)]
    [InlineData("hard", "575 712 50 176", 0)]
    [InlineData("hard", "575 712 49 176", 1)]
    [InlineData("hard", "576 712 50 176", 1)]
    [InlineData("hard", "575 713 50 176", 1)]
    [InlineData("hard", "575 712 50 175", 1)]
    [InlineData("hard", "0 0 1200 600", 1)]
    [InlineData("wet", "0 0 1200 1200", 1)]
    [InlineData("uneven", "0 0 1200 1200", 1)]
    [InlineData("matted", "0 0 10 10", 0)]
    public void On_a_hard_floor_a_fall_lands_on_a_mat(string surface, string mat, int findings) =>
        Judge(Fight.Of($"left-lead Bruno@12/250 surface={surface}", Fall).With(b => b with { Floor = b.Floor with { Mats = [MatOf(mat)] } })).Finds(findings, 2);

    [Fact]
    public void How_far_beyond_the_mat_it_reaches_is_said() =>
        Judge(Fight.Of("left-lead Bruno@12/250 surface=hard", Fall).With(b => b with { Floor = b.Floor with { Mats = [MatOf("500 600 200 200")] } })).Finds(1, 2).Concerns("Bruno").Measures(-0.63m, 0.25m, "m").Says("beyond the nearest mat");

    /// <summary>1.76 m and a quarter, and the step of the technique.</summary>
    [Theory]
    [InlineData("300 300 600 600", 0)]
    [InlineData("500 300 400 600", 1)]
    public void The_hero_falls_where_a_mat_reaches_all_round_the_mark(string mat, int findings) =>
        Judge(Fight.Of("left-lead Bruno@12/250 surface=hard", "swing-right > knocked-down {presses-on}").With(b => b with { Floor = b.Floor with { Mats = [MatOf(mat)] } })).Finds(findings, 1);

    private static Mat MatOf(string text)
    {
        var sides = text.Split(' ').Select(w => new Centimetres(int.Parse(w, System.Globalization.CultureInfo.InvariantCulture))).ToArray();
        return new Mat("mat", sides[0], sides[1], sides[2], sides[3]);
    }

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
    public void An_attackers_limit_forbids_the_attack() => Judge(Fight.Of("left-lead Bruno@12/250", "swing-right > outside-block-left {limb-stopped}").WithAttacker(0, b => b with { Limits = ["no-right-hand"] })).Finds(1, 1).Concerns("Bruno");

    [Fact]
    public void Each_person_is_told_once_a_move() =>
        Judge(Fight.Of("left-lead Bruno@12/250 hero=novice surface=hard", "swing-right > outside-block-left {limb-stopped} ; throw-finish-right {out-over}")
            .WithAttacker(0, b => b with { Skill = Skill.Novice, Limits = ["no-thrown-over-fall"] })).Finds(2, 2).Says("Ines is novice").Says("Bruno is novice");

    [Fact]
    public void Who_shares_the_reaction_must_be_able_too()
    {
        var fight = Fight.Of(
            "square Bruno@12/250 Wanda@2/250",
            "Wanda: swing-right > outside-block-left {limb-stopped} ; body-punch-right {folds} ; Bruno: !swing-right > outside-block-left {limb-stopped} ; heads-together {out-crumples}");
        Judge(fight).FindsNothing();
        Judge(fight.WithAttacker(1, w => w with { Limits = ["no-side-fall"] })).Finds(1, 4).Concerns("Wanda");
    }

    /// <summary>From one leg the hero comes down low: of all stances from which the uppercut can start the only one that a move asks for here.</summary>
    [Theory]
    [InlineData("right-knee: no bend", Stance.Low, 1)]
    [InlineData("injured-right-knee", Stance.Low, 1)]
    [InlineData("right-knee: no kneel", Stance.Low, 0)]
    [InlineData("neck: no use", Stance.Low, 0)]
    [InlineData("right-knee: no bend", null, 0)]
    public void The_stance_taken_in_a_gap_must_be_one_that_the_hero_may_take(string limit, Stance? said, int findings)
    {
        var fight = Fight.Of("left-lead Bruno@12/250", "swing-right > outside-block-left {limb-stopped} ; +3 side-hammer-right {head-turns}");
        Judge((fight with { Moves = [fight.Moves[0], fight.Moves[1] with { Stance = said }] }).WithHero(h => h with { Limits = [limit] })).Finds(findings, 2);
    }

    [Fact]
    public void Of_the_stances_that_a_technique_starts_from_the_hero_takes_one_that_is_allowed()
    {
        var fight = Fight.Of("left-lead Bruno@12/250", "swing-right > takes-face-hit {presses-on} ; +4 ground-punch-right {jerks-on-floor}");
        Assert.Equal(Stance.KneelingRight, fight.Steps()[1].StanceStart);
        Assert.Equal(Stance.KneelingLeft, fight.WithHero(h => h with { Limits = ["right-knee: no kneel"] }).Steps()[1].StanceStart);
    }

    [Theory]
    [InlineData("left-wrist: no carry", 1)]
    [InlineData("neck: no work", 1)]
    [InlineData("right-wrist: no strain", 0)]
    public void Getting_up_is_judged_as_well(string limit, int findings) =>
        Judge(Fight.Of("left-lead Bruno@12/250", "swing-right > knocked-down {presses-on} ; +8 jab-left {head-back}").WithHero(h => h with { Limits = [limit] })).Finds(findings, 2);

    [Theory]
    [InlineData("no-jump", "knocked-flat", 1)]
    [InlineData("no-spin", "spinning-fall", 1)]
    [InlineData("no-jump", "back-fall", 0)]
    public void A_reaction_that_leaves_the_floor_or_spins_is_forbidden_to_who_must_not(string limit, string reaction, int findings) =>
        Judge(Fight.Of("left-lead Bruno@12/250", $"swing-right > outside-block-left {{limb-stopped}} ; swing-right {{{reaction}}}").WithAttacker(0, b => b with { Limits = [limit] })).Finds(findings, 2);

    [Fact]
    public void Heels_do_not_jump_either() =>
        Judge(Fight.Of("left-lead Bruno@12/250", "swing-right > outside-block-left {limb-stopped} ; swing-right {knocked-flat}").WithAttacker(0, b => b with { Wardrobe = ["heels"] })).Finds(1, 2).Says("wardrobe");

    [Fact]
    public void Who_is_bumped_into_must_be_able_to_take_it()
    {
        var fight = Fight.Of("square Bruno@12/250 Wanda@12:30/350", "swing-right > outside-block-left {limb-stopped} ; +1 double-palm {crashes-into}");
        Judge(fight).FindsNothing();
        Judge(fight.WithAttacker(1, w => w with { Limits = ["injured-left-shoulder"] })).Finds(1, 2).Concerns("Wanda");
    }

    [Theory]
    [InlineData("no-right-leg", "left-lead Bruno@12/250", "lead-kick-left {folds}", 1)]
    [InlineData("no-right-hand", "left-lead Bruno@12/250", "double-palm {staggers-back}", 1)]
    [InlineData("no-right-hand", "left-lead Bruno@12/250", "lead-kick-left {folds}", 0)]
    public void A_leg_or_a_hand_that_must_not_work_is_not_stood_on_or_pulled_either(string limit, string start, string move, int findings) =>
        Judge(Fight.Of(start, $"walk-in > {move}").WithHero(h => h with { Limits = [limit] })).Finds(findings, 1);

    [Theory]
    [InlineData("left-ankle: no strain", 1)]
    [InlineData("neck: no kneel", 0)]
    public void What_a_technique_does_to_the_partner_is_judged(string limit, int findings) =>
        Judge(Fight.Of("left-lead Bruno@12/250", "swing-right > outside-block-left {limb-stopped} ; foot-sweep-right {to-one-knee}").WithAttacker(0, b => b with { Limits = [limit] })).Finds(findings, 2);

    /// <summary>Taking hold and letting go ask nothing of the shoulder; pulling against somebody while Wanda is fought goes through the whole arm.</summary>
    [Theory]
    [InlineData("left-shoulder: no strain", 1)]
    [InlineData("right-shoulder: no strain", 0)]
    [InlineData("left-wrist: no kneel", 0)]
    public void A_hero_who_keeps_hold_of_one_while_kicking_another_is_judged_for_the_hold(string limit, int findings) =>
        Judge(Held.WithHero(h => h with { Limits = [limit] })).Tells(findings, 2, "Ines");

    [Theory]
    [Fails("able")]
    [InlineData("right-shoulder: no strain", 1)]
    [InlineData("left-leg: no carry", 1)]
    [InlineData("left-leg: no bend", 0)]
    public void So_is_who_is_held_and_serves_as_base(string limit, int findings) =>
        Judge(Held.WithAttacker(0, b => b with { Limits = [limit] })).Tells(findings, 2, "Bruno");

    /// <summary>Nobody else is fought: what the hold asks then stands with the moves on the one who is held.</summary>
    [Fact]
    public void Who_is_let_go_before_another_is_fought_is_not() =>
        Judge(Fight.Of("square Bruno@12/250", "cross-right > wrist-catch-left {arm-caught} ; lets-go-standing-left {staggers-back}").WithHero(h => h with { Limits = ["left-shoulder: no strain"] })).FindsNothing();

    [Theory]
    [InlineData("right-shoulder: no strain", 1)]
    [InlineData("right-wrist: no work", 0)]
    [InlineData("left-shoulder: no strain", 0)]
    public void So_is_who_keeps_a_grip_while_the_hero_fights_another(string limit, int findings) =>
        Judge(Gripped.WithAttacker(0, b => b with { Limits = [limit] })).Tells(findings, 2, "Bruno");

    [Theory]
    [InlineData("left-shoulder: no strain", 1)]
    [InlineData("right-wrist: no pivot", 0)]
    public void And_the_hero_who_is_gripped_meanwhile(string limit, int findings) =>
        Judge(Gripped.WithHero(h => h with { Limits = [limit] })).Tells(findings, 2, "Ines");

    /// <summary>Who hugs from behind holds with the arms; the hero's weight comes on the legs as well.</summary>
    [Theory]
    [InlineData("injured-right-knee", 1)]
    [InlineData("neck: no strain", 0)]
    public void Who_bears_the_hero_in_a_kick_at_another_is_judged_for_it(string limit, int findings) =>
        Judge(Fight.Of("square Bruno@6/200 Wanda@12/350", "!bear-hug-rear > hugged-from-behind {keeps-grip} ; Wanda: +2 rush > lean-back-kick {staggers-back} ; Bruno: +1 drop-out {grip-breaks}")
            .WithAttacker(0, b => b with { Limits = [limit] })).Tells(findings, 2, "Bruno");

    private static Fight Held => Fight.Of("square Bruno@12/250 Wanda@2/350", "cross-right > wrist-catch-left {arm-caught} ; Wanda: +1 walk-in > hold-and-kick-right {folds} ; Bruno: pull-past-left {rolls-through}");

    private static Fight Gripped => Fight.Of("square Bruno@12/250 Wanda@2/350", "wrist-grab-same-right > wrist-taken-left {keeps-grip} ; Wanda: +1 swing-right > held-block-right {limb-stopped} ; Bruno: thumb-pull-left {grip-breaks}");

    /// <summary>Whoever opens on the right knee bends the left, whatever comes then.</summary>
    [Theory]
    [InlineData("kneeling-right", "injured-left-knee", 1)]
    [InlineData("kneeling-right", "left-shoulder: no work", 0)]
    [InlineData("left-lead", "injured-left-knee", 0)]
    public void The_stance_in_which_the_fight_opens_is_asked_of_the_hero(string start, string limit, int findings) =>
        Verify.Rule("able").Given(Fight.Of(start + " Bruno@12/250", string.Empty).WithHero(h => h with { Limits = [limit] })).Finds(findings, 0);
}

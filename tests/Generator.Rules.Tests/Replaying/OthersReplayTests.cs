using Generator.Domain;
using static Generator.Rules.Tests.Replaying.Case;

namespace Generator.Rules.Tests.Replaying;

/// <summary>What a move does to attackers other than its target, and attacks that nothing answers.</summary>
public sealed class OthersReplayTests
{
    private static readonly Reaction Crashes = CaseBook.Reels with { Id = "crashes", Round = 4, HitsSecond = true, Back = new Centimetres(60) };
    private static readonly Technique Shove = CaseBook.Hit with { Id = "shove", Carry = Carry.Clockwise };
    private static readonly Technique Hold = CaseBook.Hit with { Id = "hold", LeftEnd = HandEnd.Holding };
    private static readonly SecondNeed Beside = new(2, 8, new(50), new(120), PostureSet.Of(Posture.OffBalance));
    private static readonly Technique Bound = CaseBook.Hit with { Id = "bound", EndBound = Domain.Bound.Rear };

    [Theory]
    [InlineData("3", "6", 1)]
    [InlineData("3", "2:30", 2)]
    [InlineData("1:30", "2:30", 1)]
    [InlineData("4", "6", -1)]
    public void The_nearest_within_two_half_hours_of_the_landing_place_is_hit(string wanda, string piet, int expected)
    {
        // Bruno lands at 12 + 4 = 2 o'clock (half hour 4). 3 is 2 away, 2:30 and 1:30 are 1, 4 o'clock is 4, 6 is 8. Of equals the first.
        var step = new Case().At("12", 90).At(wanda, 90).At(piet, 90).Knows(Shove).Knows(Crashes).Play(Row(0, 0, "shove", "crashes", "blow"));

        Assert.Equal(expected, step.Second);
    }

    [Fact]
    public void The_one_bumped_into_is_off_balance_and_carried_on()
    {
        var wanda = new Case().At("12", 90).At("2", 150).Knows(Shove).Knows(Crashes).Play(Row(0, 0, "shove", "crashes", "blow")).After.Attackers[1];

        // Open to 2 + 2, ready at 2 + 4; 60 cm beyond Bruno, who has come to 150.
        Assert.Equal((Posture.OffBalance, 4, 6, 4, 210), (wanda.Posture, wanda.OpenUntil, wanda.ReadyAt, wanda.Bearing, wanda.Distance));
    }

    [Fact]
    public void Who_lies_on_the_floor_or_is_getting_up_is_not_bumped_into()
    {
        // Wanda is on her back from 2, and ready at 2 + 12 + 2.
        var flat = CaseBook.Reels with { Id = "flat", Posture = Posture.OnBack, ReadySeconds = 6m };
        int Second(int start) => new Case().At("12", 90).At("2", 90).Knows(Shove).Knows(Crashes).Knows(flat).Play(
            Row(0, 1, "hit", "flat", "blow"),
            Row(start, 0, "shove", "crashes", "blow")).Second;
        Assert.Equal((-1, -1, 1), (Second(2), Second(15), Second(16)));
    }

    [Fact]
    public void Being_bumped_into_never_brings_anybody_back_sooner()
    {
        // Wanda reels until 4 and would be ready at 2 + 12; bumped into from 2 to 4 she would be at 4 + 4.
        var slow = CaseBook.Reels with { Id = "slow", ReadySeconds = 6m };
        var wanda = new Case().At("12", 90).At("2", 90).Knows(Shove).Knows(Crashes).Knows(slow).Play(
            Row(0, 1, "hit", "slow", "blow"),
            Row(2, 0, "shove", "crashes", "blow")).After.Attackers[1];
        Assert.Equal((Posture.OffBalance, 14), (wanda.Posture, wanda.ReadyAt));
    }

    [Fact]
    public void Whoever_has_not_entered_is_not_hit() =>
        Assert.Equal(-1, new Case().At("12", 90).At("2", 150, 5).Knows(Shove).Knows(Crashes).Play(Row(0, 0, "shove", "crashes", "blow")).Second);

    [Fact]
    public void A_technique_for_two_shares_the_reaction_and_leaves_each_in_place()
    {
        var heads = CaseBook.Hit with { Id = "heads", Two = Beside };
        var after = new Case().At("12", 90).At("1", 90).Knows(heads).Play(
            Row(0, 1, "hit", "reels", "blow"),
            Row(2, 0, "heads", "drops", "blow")).After;

        // Wanda reels until 4, one hour beside Bruno; both go out at the end, 4.
        Assert.Equal((4, 4), (after.Attackers[0].OutAt, after.Attackers[1].OutAt));
        Assert.Equal((0, 2), (after.Attackers[0].Bearing, after.Attackers[1].Bearing));
    }

    [Fact]
    public void A_technique_for_two_finds_nobody_once_the_second_has_recovered()
    {
        var heads = CaseBook.Hit with { Id = "heads", Two = Beside };
        var step = new Case().At("12", 90).At("1", 90).Knows(heads).Play(
            Row(0, 1, "hit", "reels", "blow"),
            Row(5, 0, "heads", "drops", "blow"));

        Assert.Equal(-1, step.Second);
        Assert.Equal(-1, step.After.Attackers[1].OutAt);
    }

    [Fact]
    public void Who_is_shoved_together_with_another_goes_straight_back_along_their_own_bearing()
    {
        var shove = CaseBook.Hit with { Id = "both", Carry = Carry.Clockwise, Two = Beside };
        var back = CaseBook.Reels with { Id = "back", Back = new Centimetres(40), Round = 1 };
        var after = new Case().At("12", 90).At("3", 110).Knows(shove).Knows(back).Play(
            Row(0, 1, "hit", "reels", "blow"),
            Row(2, 0, "both", "back", "blow")).After;

        // Bruno goes round by the carry, a half hour clockwise; Wanda, whose attack brought her to 90 at 3 o'clock (half hour 6), only back.
        Assert.Equal((1, 130), (after.Attackers[0].Bearing, after.Attackers[0].Distance));
        Assert.Equal((6, 130, Posture.OffBalance), (after.Attackers[1].Bearing, after.Attackers[1].Distance, after.Attackers[1].Posture));
    }

    [Theory]
    [InlineData("1", 120, 1)]
    [InlineData("1", 125, -1)]
    [InlineData("12:30", 90, -1)]
    [InlineData("4", 90, 1)]
    [InlineData("5", 90, -1)]
    public void The_second_is_where_the_technique_reaches_both(string wanda, int distance, int expected)
    {
        // Beside: 2 to 8 half hours round, 50 to 120 cm off; 1 o'clock is 2, 4 o'clock 8.
        var both = CaseBook.Hit with { Id = "both", Two = Beside with { Needs = PostureSet.Of(Posture.Ready) } };
        Assert.Equal(expected, new Case().At("12", 90).At(wanda, distance).Knows(both).Play(Row(0, 0, "both", "reels", "blow")).Second);
    }

    [Fact]
    public void A_gripper_goes_round_with_the_hero()
    {
        var swing = CaseBook.Hit with { Id = "swing", Turn = new Turn(6) };
        var bruno = new Case().At("11", 90).At("3", 90).Knows(Bound, swing).Play(
            Row(0, 0, "bound", "grips", "seize"),
            Row(2, 1, "swing", "reels", "blow")).After.Attackers[0];

        // 22 + 6 = 28, which is 4.
        Assert.Equal((4, Posture.Gripping), (bruno.Bearing, bruno.Posture));
    }

    [Fact]
    public void Bystanders_do_not_go_round_with_the_hero()
    {
        var swing = CaseBook.Hit with { Id = "swing", Turn = new Turn(6) };

        Assert.Equal(22, new Case().At("11", 90).At("3", 90).Knows(swing).Play(Row(0, 1, "swing", "reels", "blow")).After.Attackers[0].Bearing);
    }

    [Fact]
    public void A_held_attacker_is_walked_to_the_targets_bearing()
    {
        var shield = CaseBook.Hit with { Id = "shield", CarriesHeld = true };
        var after = new Case().At("12", 90).At("3", 90).Knows(Hold, shield).Play(
            Row(0, 0, "hold", "caught", "blow"),
            Row(2, 1, "shield", "reels", "blow")).After;

        Assert.Equal((6, Posture.HeldArm), (after.Attackers[0].Bearing, after.Attackers[0].Posture));
    }

    [Fact]
    public void Nothing_answers_so_the_attacker_stands_where_the_attack_ended()
    {
        var step = new Case().At("2", 290).Play(Row(20, 0, null, null, "blow"));
        var bruno = step.After.Attackers[0];

        // Starts at 20, lands at 22; it takes none of the hero's time, so the next gap still counts from their last move.
        Assert.Equal((22, 0, 1), (step.Contact, step.After.Time, step.After.Moves));
        Assert.Equal((4, 90, 22), (bruno.Bearing, bruno.Distance, bruno.ReadyAt));
    }

    [Fact]
    public void An_unanswered_attack_during_a_move_does_not_end_the_move()
    {
        var steps = new Case().At("12", 90).At("3", 90).PlayAll(Row(0, 0, "hit", "reels", "blow"), Row(1, 1, null, null, "blow"));

        // The hit lasts to 2, the other attack starts at 1.
        Assert.Equal((-1, 2), (steps[1].Gap, steps[1].After.Time));
    }

    [Fact]
    public void A_pause_leaves_everybody_as_they_were()
    {
        var step = new Case().At("12", 90).At("3", 190).Play(Row(0, null, "wait"));

        Assert.Equal(step.Before.Attackers, step.After.Attackers);
        Assert.Equal((2, 1, -1), (step.After.Time, step.After.Moves, step.After.LastTarget));
    }
}

using Generator.Domain;
using Generator.Rules.Replaying;
using static Generator.Rules.Tests.Replaying.Case;

namespace Generator.Rules.Tests.Replaying;

/// <summary>What the hero's hands do: out and back, holding, held and freed.</summary>
public sealed class HandReplayTests
{
    private static readonly Technique Block = CaseBook.Hit with { Id = "block", LeftEnd = HandEnd.Out };
    private static readonly Technique Catch = CaseBook.Hit with { Id = "catch", LeftEnd = HandEnd.Holding };
    private static readonly Technique Taken = CaseBook.Hit with { Id = "taken", RightEnd = HandEnd.Held, EndBound = Bound.Front };

    private static Case Stage() => new Case().At("12", 90).At("3", 90).Knows(Block, Catch, Taken);

    [Theory]
    [InlineData(2, HandKind.Out)]
    [InlineData(3, HandKind.Guard)]
    public void An_out_hand_is_back_after_half_a_count(int start, HandKind expected) =>
        // The block ends at 2.
        Assert.Equal(expected, Stage().Play(Row(0, 0, "block", "reels", "blow"), Row(start, 0, "hit")).LeftStart.Kind);

    [Fact]
    public void An_out_hand_is_back_once_another_limb_has_worked()
    {
        // No gaps at all: block 0-2, hit 2-4, the hand is asked for at 4.
        var step = Stage().Play(Row(0, 0, "block", "reels", "blow"), Row(2, 0, "hit"), Row(4, 0, "hit"));

        Assert.Equal(Hand.Guard, step.LeftStart);
    }

    [Fact]
    public void A_technique_may_leave_the_hand_out_again() =>
        Assert.Equal(Hand.Out, Stage().Play(Row(0, 0, "block", "reels", "blow"), Row(3, 0, "block")).After.Left);

    [Fact]
    public void A_catch_holds_its_own_target()
    {
        var step = Stage().Play(Row(0, 1, "catch", "caught", "blow"));

        Assert.Equal(new Hand(HandKind.Holding, 1), step.After.Left);
        Assert.True(step.After.Holds(1));
        Assert.False(step.After.Holds(0));
    }

    [Fact]
    public void A_gap_does_not_open_a_holding_hand() =>
        Assert.Equal(new Hand(HandKind.Holding, 0), Stage().Play(Row(0, 0, "catch", "caught", "blow"), Row(20, 0, "hit")).LeftStart);

    [Fact]
    public void The_hold_goes_on_while_the_reaction_keeps_the_posture()
    {
        var step = Stage().Play(Row(0, 0, "catch", "caught", "blow"), Row(2, 0, "hit", "shakes"));

        Assert.Equal(new Hand(HandKind.Holding, 0), step.After.Left);
        Assert.Equal(Posture.HeldArm, step.After.Attackers[0].Posture);
    }

    [Fact]
    public void A_reaction_that_is_not_a_hold_frees_the_holding_hand() =>
        Assert.Equal(Hand.Guard, Stage().Play(Row(0, 0, "catch", "caught", "blow"), Row(2, 0, "hit", "reels")).After.Left);

    [Fact]
    public void The_hold_on_one_attacker_goes_on_while_the_hero_deals_with_another()
    {
        var step = Stage().Play(Row(0, 0, "catch", "caught", "blow"), Row(2, 1, "hit", "reels", "blow"));

        Assert.Equal(new Hand(HandKind.Holding, 0), step.After.Left);
        Assert.Equal(Posture.HeldArm, step.After.Attackers[0].Posture);
    }

    [Fact]
    public void A_setback_leaves_the_hand_held_and_the_body_bound_by_the_attacker()
    {
        var after = Stage().Play(Row(0, 1, "taken", "grips", "seize")).After;

        Assert.Equal((new Hand(HandKind.Held, 1), Bound.Front, 1), (after.Right, after.Bound, after.BoundBy));
        Assert.True(after.GrippedBy(1));
        Assert.False(after.GrippedBy(0));
    }

    [Fact]
    public void Any_reaction_but_gripping_ends_the_grip()
    {
        var after = Stage().Play(Row(0, 0, "taken", "grips", "seize"), Row(2, 0, "hit", "reels")).After;

        Assert.Equal((Hand.Guard, Bound.Free, -1), (after.Right, after.Bound, after.BoundBy));
    }

    [Fact]
    public void A_grip_that_is_kept_goes_on()
    {
        var after = Stage().Play(Row(0, 0, "taken", "grips", "seize"), Row(2, 0, "hit", "grips")).After;

        Assert.Equal((new Hand(HandKind.Held, 0), Bound.Front, 0), (after.Right, after.Bound, after.BoundBy));
    }

    [Fact]
    public void What_is_done_to_another_does_not_end_the_grip()
    {
        var after = Stage().Play(Row(0, 0, "taken", "grips", "seize"), Row(2, 1, "hit", "reels", "blow")).After;

        Assert.Equal((new Hand(HandKind.Held, 0), Bound.Front, 0), (after.Right, after.Bound, after.BoundBy));
    }

    [Fact]
    public void A_held_attacker_whose_hold_is_forgotten_is_free_at_once()
    {
        // The left hand holds Bruno from 2 on, then blocks Wanda's blow from 2 to 4 and is out: nobody holds Bruno any more.
        var bruno = Stage().Play(Row(0, 0, "catch", "caught", "blow"), Row(2, 1, "block", "reels", "blow")).After.Attackers[0];

        Assert.Equal((Posture.Ready, 4, 4), (bruno.Posture, bruno.OpenUntil, bruno.ReadyAt));
    }

    [Fact]
    public void Letting_go_on_the_floor_leaves_the_attacker_lying()
    {
        var letGo = CaseBook.Hit with { Id = "let-go", LeftEnd = HandEnd.Guard, RightEnd = HandEnd.Guard };
        var pinned = CaseBook.Caught with { Id = "pinned", Posture = Posture.Pinned };
        var lies = CaseBook.Reels with { Id = "lies", Posture = Posture.FaceDown };
        var after = Stage().Knows(letGo).Knows(pinned, lies).Play(Row(0, 0, "catch", "pinned", "blow"), Row(2, 0, "let-go", "lies")).After;

        // Open for 1 s = 2 half counts after the end at 4, ready after 2 s = 4, and the count in which a blow begins.
        Assert.Equal((Hand.Guard, Posture.FaceDown, 6, 10), (after.Left, after.Attackers[0].Posture, after.Attackers[0].OpenUntil, after.Attackers[0].ReadyAt));
    }
}

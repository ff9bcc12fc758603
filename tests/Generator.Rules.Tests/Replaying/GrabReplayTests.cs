using Generator.Domain;
using Generator.Rules.Replaying;
using static Generator.Rules.Tests.Replaying.Case;

namespace Generator.Rules.Tests.Replaying;

/// <summary>A grab that is escaped in the same move closes first; a defence stops it before it closes.</summary>
public sealed class GrabReplayTests
{
    private static readonly Technique Escape = CaseBook.Hit with { Id = "escape", Family = Family.Escape };
    private static readonly Technique Catch = CaseBook.Hit with { Id = "catch", LeftEnd = HandEnd.Holding };

    private static readonly Attack WristGrab = CaseBook.Blow with
    {
        Id = "wrist-grab",
        Line = new AttackLine(LineKind.GrabWrist, LineSide.Left),
        GripsLeft = HandEnd.Held,
        GripsBound = Bound.Free,
    };

    private static readonly Attack Headlock = CaseBook.Seize with { Id = "headlock", Line = new AttackLine(LineKind.GrabHead, LineSide.Left), GripsStance = Stance.Low };

    private static Case Stage() => new Case().At("12", 90).At("3", 90).Knows(Escape, Catch).Knows(WristGrab, Headlock);

    [Fact]
    public void The_wrist_is_held_when_the_escape_starts()
    {
        var step = Stage().Play(Row(0, 0, "escape", "reels", "wrist-grab"));

        Assert.Equal((MoveMode.EscapesGrab, Hand.Guard, new Hand(HandKind.Held, 0), Bound.Free), (step.Mode, step.Before.Left, step.LeftStart, step.BoundStart));
    }

    [Fact]
    public void The_body_is_bound_when_the_escape_starts()
    {
        var step = Stage().Play(Row(0, 1, "escape", "reels", "seize"));

        Assert.Equal((Bound.Front, 1), (step.BoundStart, step.BoundByStart));
    }

    [Fact]
    public void The_escape_leaves_the_hero_free()
    {
        var after = Stage().Play(Row(0, 0, "escape", "reels", "wrist-grab")).After;

        Assert.Equal((Hand.Guard, Bound.Free, Posture.OffBalance), (after.Left, after.Bound, after.Attackers[0].Posture));
    }

    [Fact]
    public void One_of_two_held_wrists_can_be_freed_and_then_the_other()
    {
        var both = CaseBook.Hit with { Id = "both", LeftEnd = HandEnd.Held, RightEnd = HandEnd.Held };
        var one = CaseBook.Hit with { Id = "one", LeftEnd = HandEnd.Guard };
        var (half, whole) = (Stage().Knows(both, one).Play(Row(0, 0, "both", "grips"), Row(2, 0, "one", "grips")).After, Stage().Knows(both, one).Play(Row(0, 0, "both", "grips"), Row(2, 0, "one", "grips"), Row(4, 0, "escape", "reels")).After);

        Assert.Equal((Hand.Guard, new Hand(HandKind.Held, 0), Posture.Gripping), (half.Left, half.Right, half.Attackers[0].Posture));
        Assert.Equal((Hand.Guard, Hand.Guard, Posture.OffBalance), (whole.Left, whole.Right, whole.Attackers[0].Posture));
    }

    [Fact]
    public void A_defence_stops_the_grab_before_it_closes()
    {
        var step = Stage().Play(Row(0, 0, "hit", "reels", "wrist-grab"));

        Assert.Equal((MoveMode.Answer, Hand.Guard), (step.Mode, step.LeftStart));
    }

    [Fact]
    public void A_hand_that_holds_somebody_cannot_be_seized()
    {
        var step = Stage().Play(Row(0, 0, "catch", "caught", "blow"), Row(2, 1, "escape", "reels", "wrist-grab"));

        Assert.Equal(new Hand(HandKind.Holding, 0), step.LeftStart);
    }

    [Fact]
    public void A_hero_who_is_bound_already_stays_bound_by_the_first()
    {
        var bound = CaseBook.Hit with { Id = "bound", EndBound = Bound.Rear };
        var step = Stage().Knows(bound).Play(Row(0, 0, "bound", "grips", "seize"), Row(2, 1, "escape", "reels", "seize"));

        Assert.Equal((Bound.Rear, 0), (step.BoundStart, step.BoundByStart));
    }

    [Fact]
    public void A_headlock_pulls_a_standing_hero_low()
    {
        var step = Stage().Play(Row(0, 0, "escape", "reels", "headlock"));

        Assert.Equal((Stance.Low, 0), (step.StanceStart, step.StanceTime));
    }

    [Fact]
    public void A_kneeling_hero_stays_on_the_knee()
    {
        var kneel = CaseBook.Hit with { Id = "kneel", EndStance = Stance.KneelingLeft };
        var step = Stage().Knows(kneel).Play(Row(0, 0, "kneel", "reels", "blow"), Row(8, 0, "escape", "reels", "headlock"));

        Assert.Equal(Stance.KneelingLeft, step.StanceStart);
    }

    [Fact]
    public void In_the_grip_there_is_no_time_to_change_stance()
    {
        var upright = Escape with { Id = "upright", Starts = StanceSet.Of(Stance.Square) };
        var step = Stage().Knows(upright).Play(Row(10, 0, "upright", "reels", "headlock"));

        // Low to square takes 2, but the head is held.
        Assert.Equal(StanceTable.Never, step.StanceTime);
    }

    [Fact]
    public void A_grip_carries_the_line_of_its_grab()
    {
        var steps = Stage().PlayAll(Row(0, 0, "hit", "grips", "wrist-grab"), Row(2, 0, "hit", "grips"), Row(4, 0, "hit", "reels"));

        Assert.Equal(WristGrab.Line, steps[0].After.Attackers[0].Grip);
        Assert.Equal(WristGrab.Line, steps[1].After.Attackers[0].Grip);
        Assert.Null(steps[2].After.Attackers[0].Grip);
    }
}

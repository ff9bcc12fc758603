using Generator.Domain;

namespace Generator.Library.Tests.Bundled;

/// <summary>A few records in full, on both sides, so that no field is lost or swapped on the way from the files.</summary>
public class RecordTests
{
    private static Book Book => BundledLibrary.Book;

    [Fact]
    public void Outside_block()
    {
        var left = Book.Technique("outside-block-left");
        Assert.Equal("Outside block left", left.Name);
        Assert.Equal(["outer block", "forearm block"], left.Aliases);
        Assert.Equal((Side.Left, Family.Defence), (left.Side, left.Family));
        Assert.Equal([Stance.LeftLead, Stance.RightLead, Stance.Square, Stance.Low], left.Starts.Members);
        Assert.Null(left.EndStance);
        Assert.Equal((HandNeed.Guard, HandNeed.Unused), (left.LeftNeed, left.RightNeed));
        Assert.Equal((HandEnd.Out, HandEnd.Unchanged), (left.LeftEnd, left.RightEnd));
        Assert.Equal((BoundSet.Free, (Bound?)null), (left.Bounds, left.EndBound));
        Assert.Equal((new Window(-4, 2), Turn.None, Carry.WithAttack), (left.Window, left.Turn, left.Carry));
        Assert.Equal(new Band(Limb.Arm, 0.85m, 1.9m, default, default, MeetsOnTheWay: false), left.Band);
        Assert.Equal((new HalfCounts(2), 0.45m, 2), (left.Length, left.FewestSeconds, left.Weight));
        Assert.Equal(PostureSet.Empty, left.Needs);
        Assert.Equal([LineKind.HighStraight, LineKind.HighRound, LineKind.HighOver, LineKind.MiddleStraight], left.Answers.Members.Select(l => l.Kind));
        Assert.All(left.Answers.Members, l => Assert.Equal(LineSide.Left, l.Side));
        Assert.Equal(["limb-stopped", "limb-swept-out", "comes-again"], left.Reactions);
        Assert.Equal((ContactKind.Contact, Knap.Contact, Sells.Any, Height.High), (left.Kind, left.Knap, left.Sells, left.Height));
        Assert.Equal(["left-hand"], left.Demands);
        Assert.False(left.Draws || left.Supported || left.TakesTwo || left.CarriesHeld || left.Recovery);

        var right = Book.Technique("outside-block-right");
        Assert.Equal(new Window(-2, 4), right.Window);
        Assert.Equal(left.Answers.Mirrored, right.Answers);
        Assert.Contains(new AttackLine(LineKind.HighOver, LineSide.Right), right.Answers.Members);
        Assert.Equal((HandNeed.Unused, HandNeed.Guard), (right.LeftNeed, right.RightNeed));
        Assert.Equal(["right-hand"], right.Demands);
    }

    [Fact]
    public void Hip_throw()
    {
        var throwRight = Book.Technique("hip-throw-right");
        Assert.Equal(Stance.Square, throwRight.EndStance);
        Assert.Equal((HandNeed.TakeHold, HandNeed.TakeHold), (throwRight.LeftNeed, throwRight.RightNeed));
        Assert.Equal((HandEnd.Holding, HandEnd.Guard), (throwRight.LeftEnd, throwRight.RightEnd));
        Assert.Equal((-12, Carry.CounterClockwise), (throwRight.Turn.HalfHours, throwRight.Carry));
        Assert.Equal(new Band(Limb.Arm, 0.35m, 0.65m, new(75), new(20), MeetsOnTheWay: false), throwRight.Band);
        Assert.Equal([Posture.Folded, Posture.HeadBack, Posture.Turned, Posture.OffBalance, Posture.HeldArm, Posture.HeldBody], throwRight.Needs.Members);
        Assert.Equal((Skill.Trained, Skill.Stunt, true), (throwRight.HeroSkill, throwRight.AttackerSkill, throwRight.Draws));
        Assert.Equal((12, Carry.Clockwise), (Book.Technique("hip-throw-left").Turn.HalfHours, Book.Technique("hip-throw-left").Carry));
    }

    [Fact]
    public void Gripper_shield_and_other_bounds()
    {
        var shield = Book.Technique("gripper-shield-left");
        Assert.Equal((BoundSet.Rear, (Bound?)null, true), (shield.Bounds, shield.EndBound, shield.Supported));
        Assert.Equal(3, shield.Answers.Members.Count(l => l.Kind == LineKind.HighRound));
        Assert.Equal((BoundSet.Free | BoundSet.Front), Book.Technique("body-punch-left").Bounds);
        Assert.Equal((BoundSet.Front, (Bound?)Bound.Free), (Book.Technique("hip-frame").Bounds, Book.Technique("hip-frame").EndBound));
        Assert.Equal((BoundSet.Free, (Bound?)Bound.Rear), (Book.Technique("hugged-from-behind").Bounds, Book.Technique("hugged-from-behind").EndBound));
        Assert.True(Book.Technique("shield-turn-right").CarriesHeld);
        Assert.Equal(HandNeed.HoldingOther, Book.Technique("shield-turn-right").RightNeed);
        Assert.Equal(HandNeed.HeldByOther, Book.Technique("held-block-right").LeftNeed);
        Assert.True(Book.Technique("heads-together").TakesTwo);
        Assert.Equal(new Band(Limb.Leg, 1.55m, 1.95m, new(20), new(45), MeetsOnTheWay: false), Book.Technique("high-round-kick-right").Band);
        Assert.True(Book.Technique("stop-kick-right").Band.MeetsOnTheWay);
        Assert.True(Book.Technique("catch-breath").Window.IsAnywhere);
        Assert.Equal(["get-up", "kip-up", "rise", "roll-up"], Book.Techniques.Where(t => t.Recovery).Select(t => t.BaseId).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));
    }

    /// <summary>Written down by hand, from what the names say; the library's check looks at jumps, turns, steps and falls only.</summary>
    [Theory]
    [InlineData(false, "step-back side-step-left let-pass-left leg-fade hop-back hop-over leap-aside-right yield-and-turn-left pivot-away-left step-out-and-turn-left duck-and-turn-right")]
    [InlineData(false, "turning-block-left jumping-front-kick-right flying-side-kick-right back-off-kick-right hopping-push-kick-left step-punch-right leaping-punch-right drop-to-knee-left floor-roll-left look-about-left")]
    [InlineData(true, "sway-back slip-left duck jab-left front-kick-right outside-block-left shield-turn-left hold-and-block-right hold-and-kick-right hit-while-holding-left listens")]
    public void Whether_it_works_while_somebody_is_held(bool works, string ids) =>
        Assert.All(ids.Split(' '), id => Assert.True(Book.Technique(id).WhileHolding == works, id));

    [Theory]
    [InlineData("knocked-down", FallClass.Back)]
    [InlineData("tackled-down", FallClass.Back)]
    [InlineData("stomach-throw", FallClass.Back)]
    [InlineData("pushed-from-behind", FallClass.Forward)]
    [InlineData("knocked-to-knee-left", FallClass.ToKnee)]
    [InlineData("drop-to-knee-right", FallClass.ToKnee)]
    [InlineData("takes-face-hit", FallClass.None)]
    public void The_hero_falls_in_some(string id, FallClass fall) => Assert.Equal(fall, Book.Technique(id).HeroFall);

    [Fact]
    public void Headlock_and_choke()
    {
        var headlock = Book.Attack("headlock-right");
        Assert.Equal((new AttackLine(LineKind.GrabHead, LineSide.Left), true), (headlock.Line, headlock.IsGrab));
        Assert.Equal((null, null, (Bound?)Bound.Front, (Stance?)Stance.Low), (headlock.GripsLeft, headlock.GripsRight, headlock.GripsBound, headlock.GripsStance));
        Assert.Equal((new Window(-4, 4), new Centimetres(110)), (headlock.From, headlock.StartDistance));
        Assert.Equal((new HalfCounts(3), 0.7m, "step"), (headlock.Length, headlock.FewestSeconds, headlock.Arrives));
        Assert.Equal((Posture.OffBalance, 0.9m), (headlock.MissPosture, headlock.MissOpenSeconds));
        Assert.Equal("Headlock left", Book.Attack("headlock-left").Name);

        var wrist = Book.Attack("wrist-grab-same-left");
        Assert.Equal((null, (HandEnd?)HandEnd.Held, (Bound?)Bound.Free), (wrist.GripsLeft, wrist.GripsRight, wrist.GripsBound));
        Assert.Equal(new AttackLine(LineKind.GrabWrist, LineSide.Right), wrist.Line);
        Assert.Equal(new Window(9, 15), Book.Attack("bear-hug-rear").From);
        Assert.True(Book.Attack("walk-in").IsWalkIn);
        Assert.True(Book.Attack("swing-left").NonContact);
        Assert.False(Book.Attack("shove").NonContact);
    }

    [Fact]
    public void Reactions_of_every_sort()
    {
        var past = Book.Reaction("stumbles-past");
        Assert.Equal((Posture.Turned, 1.2m, 80, 12), (past.Posture, past.OpenSeconds, past.Back.Value, past.Round));
        Assert.Equal((1.8m, 2.4m, SurfaceNeed.Lane), (past.ReadySeconds, past.NoviceReadySeconds, past.Surface));

        var flat = Book.Reaction("knocked-flat");
        Assert.Equal((FallClass.Back, Skill.Stunt, SurfaceNeed.Mat, 3.6m, (decimal?)null), (flat.Fall, flat.Skill, flat.Surface, flat.ReadySeconds, flat.NoviceReadySeconds));

        Assert.Null(Book.Reaction("jolts-in-hold").Posture);
        Assert.Equal((Posture.HeldArm, (decimal?)null, -10), (Book.Reaction("arm-caught").Posture, Book.Reaction("arm-caught").OpenSeconds, Book.Reaction("arm-caught").Back.Value));
        Assert.Equal(["crashes-into"], Book.Reactions.Where(r => r.HitsSecond).Select(r => r.Id));
        Assert.All(Book.Reactions.Where(r => r.Id.StartsWith("out-", StringComparison.Ordinal)), r => Assert.Equal((Posture.Out, null), (r.Posture, r.ReadySeconds)));
    }
}

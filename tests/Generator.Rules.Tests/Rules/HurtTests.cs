using Generator.Domain;
using Generator.Rules.Replaying;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Rules;

/// <summary>A move hurts a part of the body until a count; what then must not be done with it, and when it is over.</summary>
public sealed class HurtTests
{
    /// <summary>The face hit ends at half count 1 or 2; what follows is a kick with the left knee after a block.</summary>
    private const string Kneed = "cross-right > takes-face-hit {presses-on} ; +4 cross-right > rising-block-left {limb-swept-out} ; knee-left {folds}";

    private static Found Judge(Fight fight) => Verify.Rule("able").Given(fight);

    private static Fight Hurt(string moves, int move, string part, int until) => Fight.Of("left-lead Bruno@12/250", moves).Hurting(move, part, until);

    [Fact]
    [Fails("able")]
    public void A_hurt_knee_does_not_strike() =>
        Judge(Hurt(Kneed, 1, "left-knee", 60)).Finds(1, 3).As(Severity.Unsafe).Concerns("Ines").Says("has a hurt left knee until count 31");

    [Theory]
    [Passes("able")]
    [InlineData("right-wrist")]
    [InlineData("neck")]
    public void Another_part_may_be_hurt(string part) => Judge(Hurt(Kneed, 1, part, 60)).FindsNothing();

    [Fact]
    public void It_is_over_at_the_count_and_not_before()
    {
        var kneed = Fight.Of("left-lead Bruno@12/250", Kneed).Moves[2].Start.Value;
        Judge(Hurt(Kneed, 1, "left-knee", kneed)).FindsNothing();
        Judge(Hurt(Kneed, 1, "left-knee", kneed + 1)).Finds(1, 3);
    }

    /// <summary>The kick is the blow that hurts: whoever throws it is no worse for it.</summary>
    [Fact]
    public void A_blow_hurts_its_target_and_from_its_end_on()
    {
        const string moves = "cross-right > rising-block-left {limb-swept-out} ; knee-left {folds} ; +12 cross-right > rising-block-left {limb-swept-out}";
        Judge(Hurt(moves, 2, "left-knee", 200)).FindsNothing();
        Judge(Hurt(moves, 2, "right-arm", 200)).Finds(1, 3).Concerns("Bruno").Says("has a hurt right arm until count 101");
        Judge(Hurt(moves, 1, "left-wrist", 200)).FindsNothing();
    }

    [Fact]
    public void A_mirrored_fight_is_judged_the_same()
    {
        var fight = Hurt(Kneed, 1, "left-knee", 60);
        Assert.Equal("right-knee", FightMirror.Of(fight).Moves[0].Hurts!.Part);
        Judge(FightMirror.Of(fight)).Finds(1, 3).Says("has a hurt right knee");
    }

    /// <summary>The limit that the brief names is told, and nobody twice.</summary>
    [Fact]
    public void Who_is_limited_as_well_is_told_once() =>
        Judge(Hurt(Kneed, 1, "left-leg", 60).WithHero(h => h with { Limits = ["injured-left-knee"] })).Finds(1, 3).Says("has the limit injured-left-knee");

    /// <summary>Worked by hand: the first hurt is over when the second move ends, the second one goes on beside a third.</summary>
    [Fact]
    public void Replay_keeps_what_hurts_until_it_is_over()
    {
        var steps = Fight.Of("left-lead Bruno@12/250", Kneed).Hurting(1, "neck", 5).Hurting(2, "back", 40).Hurting(3, "left-wrist", 41).Steps();
        Assert.Equal([new HurtLimb(-1, new Hurt("neck", new HalfCounts(5)), steps[0].End, 0)], steps[0].After.Hurts);
        Assert.True(steps[0].End < 5 && steps[1].End >= 5);
        Assert.Equal([new HurtLimb(0, new Hurt("back", new HalfCounts(40)), steps[1].End, 1)], steps[1].After.Hurts);
        Assert.Equal([(0, "back"), (0, "left-wrist")], steps[2].After.Hurts.Select(h => (h.Who, h.What.Part)));
    }

    /// <summary>A search that puts a defence in the place of a setback hurts nobody with it, and the row says so no more.</summary>
    [Fact]
    public void What_was_of_the_hero_is_nobody_elses()
    {
        var fight = Hurt(Kneed, 1, "left-knee", 60);
        var row = Row.Of(fight.Moves[0], fight.Scene) with { Technique = fight.Scene.Book.TechniqueIndex("rising-block-left"), Reaction = fight.Scene.Book.ReactionIndex("limb-swept-out") };
        var step = Replay.Step(fight.Scene, Replay.Open(fight.Scene, fight.Routine), row);
        Assert.Empty(step.After.Hurts);
        Assert.Null(step.Row.ToMove(fight.Scene).Hurts);
        Assert.Equal(fight.Moves[0].Hurts, Row.Of(fight.Moves[0], fight.Scene).ToMove(fight.Scene).Hurts);
    }

    [Theory]
    [InlineData("left-knee", 60, 0)]
    [InlineData("right-knee", 60, 1)]
    [InlineData("left-knee", 61, 1)]
    [InlineData(null, 0, 1)]
    [Fails("setbacks")]
    public void An_act_that_asks_for_a_setback_that_hurts_has_one(string? part, int until, int findings)
    {
        var fight = Fight.Of("left-lead Bruno@12/250", Kneed);
        fight = part is null ? fight : fight.Hurting(1, part, until);
        var asked = new Act(100, HeroStanding.InTrouble, null, new Hurt("left-knee", new HalfCounts(60)));
        var found = Verify.Rule("setbacks").Given(fight.With(b => b with { Length = new Length(20, null, 4), Acts = [asked] }));
        _ = findings == 0 ? found.Finds(0, 0) : found.Finds(1, 0).As(Severity.Broken).Says("No setback of act 1 hurts the left knee until count 31");
    }

    /// <summary>The setback stands in the second act.</summary>
    [Fact]
    public void It_stands_in_that_act()
    {
        var late = new Hurt("left-knee", new HalfCounts(60));
        var fight = Fight.Of("left-lead Bruno@12/250", Kneed).Hurting(1, "left-knee", 60);
        Act[] first = [new Act(50, HeroStanding.InTrouble, null, late), new Act(50, HeroStanding.OnTop)], second = [new Act(50, HeroStanding.Even), new Act(50, HeroStanding.InTrouble, null, late)];
        Verify.Rule("setbacks").Given(fight.With(b => b with { Length = new Length(20, null, 4), Acts = first })).FindsNothing();
        Verify.Rule("setbacks").Given(fight.With(b => b with { Length = new Length(20, null, 4), Acts = second })).Finds(1, 0).Says("act 2");
    }
}

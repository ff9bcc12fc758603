using Generator.Domain;
using Generator.Rules.Bodies;
using Generator.Rules.Replaying;
using Generator.Rules.Tests.Fights;

namespace Generator.Rules.Tests.Allies;

/// <summary>What Replay says of two heroes, worked by hand: Ines on the mark facing 12, Mira 1.50 m behind her facing 6.</summary>
public sealed class TwoHeroesReplayTests
{
    private const string Blocks = "swing-right > outside-block-left {limb-stopped}";

    private static readonly Fight Both = TwoHeroes.Of("left-lead Bruno@12/250 Wanda@6/400", 150, Blocks + " ; +1 cross-right {head-back}", "Wanda: " + Blocks);

    [Fact]
    public void Each_sees_everybody_from_their_own_mark()
    {
        // Wanda is 4 m from Ines at 6 and 2.50 m from Mira at 6; Bruno 2.50 m from Ines at 12 and 4 m from Mira at 12, behind her.
        var (ines, mira) = (Both.Steps()[0], Both.Steps()[1]);
        Assert.Equal((false, true), (ines.IsByAlly, mira.IsByAlly));
        Assert.Equal((12, 400), (ines.Before.Attackers[1].Bearing, ines.Before.Attackers[1].Distance));
        Assert.Equal((12, 250), (mira.Before.Attackers[1].Bearing, mira.Before.Attackers[1].Distance));
        Assert.Equal("Mira", mira.Scene.Brief.Hero.Name);
        Assert.Equal((0, 12), (ines.FacingStart, mira.FacingStart));
        Assert.Equal(new Place(0, -150), mira.Mark);
    }

    [Fact]
    public void The_gap_is_from_ones_own_move()
    {
        // Ines's block and Mira's last from 0 to 2; Ines's cross comes at 3, a half count after the end of hers.
        Assert.Equal([0, 0, 1], Both.Steps().Select(s => s.Gap));
        Assert.Equal([0, 0, 3], Both.Steps().Select(s => s.Start));
    }

    [Fact]
    public void The_others_moves_change_no_stance_hands_or_facing()
    {
        var alone = Fight.Of("left-lead Bruno@12/250 Wanda@6/400", Blocks + " ; +1 cross-right {head-back}").Steps()[^1].After;
        var beside = Both.Steps()[^1].After;
        Assert.Equal((alone.Stance, alone.Facing, alone.Left, alone.Right, alone.Time), (beside.Stance, beside.Facing, beside.Left, beside.Right, beside.Time));
        Assert.Equal(alone.Attackers[0] with { BusyUntil = 0, Leg = null, Stays = null }, beside.Attackers[0] with { BusyUntil = 0, Leg = null, Stays = null });
    }

    [Fact]
    public void Whoever_goes_from_one_to_the_other_is_where_the_one_left_them()
    {
        // The staggers carry Bruno 80 cm back along 12; Mira sees him 1.50 m farther away.
        var fight = TwoHeroes.Of("left-lead Bruno@12/250 Wanda@6/400", 150, Blocks + " ; cross-right {staggers-back}", "=16 Bruno: !" + Blocks);
        var steps = fight.Steps();
        var left = steps[1].After.Attackers[0];
        Assert.Equal((0, left.Distance + 150), (steps[2].Before.Attackers[0].Bearing, steps[2].Before.Attackers[0].Distance));
        Assert.Equal(left.ReadyAt, steps[2].Before.Attackers[0].ReadyAt);
        Assert.Equal(12, Math.Abs(steps[2].SeenFrom));
    }

    [Fact]
    public void An_attacker_who_is_let_go_of_by_the_other_frees_the_hands()
    {
        // Bruno holds Ines by the wrist; Mira's blow makes him let go.
        var fight = TwoHeroes.Of("left-lead Bruno@12/250", 150, "bear-hug-front > hugged-in-front {keeps-grip}", "=8 Bruno: cross-right {head-back}");
        if (fight.Steps()[0].After.Attackers[0].Posture != Posture.Gripping)
        {
            Assert.Fail($"He holds nobody: {fight.Steps()[0].After.Attackers[0].Posture}.");
        }

        Assert.True(fight.Steps()[1].Before.IsWithOther(0));
        Assert.False(fight.Steps()[1].After.ForOther(fight.Scene.Marks).GrippedBy(0));
    }

    [Fact]
    public void Without_an_ally_nothing_is_kept_for_one()
    {
        var step = Fight.Of("left-lead Bruno@12/250", Blocks).Steps()[0];
        Assert.Null(step.Scene.Other);
        Assert.Equal((0, false, 0), (step.After.Attackers[0].BusyUntil, step.IsByAlly, step.After.Attackers[0].Stays is null ? 0 : 1));
    }
}

using Generator.Domain;
using static Generator.Rules.Tests.Replaying.Case;

namespace Generator.Rules.Tests.Replaying;

/// <summary>Which stance the hero is in when a technique starts, and how long the change takes.</summary>
public sealed class StanceReplayTests
{
    /// <summary>The first move ends in <paramref name="from"/>, the second starts from one of <paramref name="to"/>.</summary>
    private static (Stance Stance, int Time) Change(Stance from, StanceSet to, Skill skill = Skill.Stunt, Side? lead = Side.Left)
    {
        var step = new Case().At("12", 90)
            .Hero(h => h with { Skill = skill, Lead = lead })
            .Knows(CaseBook.Hit with { Id = "first", EndStance = from }, CaseBook.Hit with { Id = "second", Starts = to })
            .Play(Row(0, 0, "first", "reels", "blow"), Row(2, 0, "second"));
        return (step.StanceStart, step.StanceTime);
    }

    [Fact]
    public void A_technique_that_starts_from_this_stance_costs_no_time() =>
        Assert.Equal((Stance.LeftLead, 0), Change(Stance.LeftLead, StanceSet.Of(Stance.LeftLead, Stance.Square)));

    [Fact]
    public void From_one_lead_to_the_other_takes_a_count() =>
        Assert.Equal((Stance.RightLead, 2), Change(Stance.LeftLead, StanceSet.Of(Stance.RightLead)));

    [Fact]
    public void Of_equal_ways_square_comes_first() =>
        // From low: left lead 2, right lead 2, square 2.
        Assert.Equal((Stance.Square, 2), Change(Stance.Low, StanceSet.Of(Stance.LeftLead, Stance.RightLead, Stance.Square)));

    [Theory]
    [InlineData(Side.Left, Stance.LeftLead)]
    [InlineData(Side.Right, Stance.RightLead)]
    [InlineData(null, Stance.LeftLead)]
    public void Of_two_leads_the_heros_own_foot_comes_first(Side? lead, Stance expected) =>
        Assert.Equal((expected, 2), Change(Stance.Low, StanceSet.Of(Stance.LeftLead, Stance.RightLead), lead: lead));

    [Fact]
    public void The_soonest_way_beats_the_preferred_foot() =>
        // From the back: a knee takes 4, standing 8.
        Assert.Equal((Stance.KneelingRight, 4), Change(Stance.FloorBack, StanceSet.Of(Stance.Square, Stance.KneelingRight)));

    [Theory]
    [InlineData(Skill.Novice, 3)]
    [InlineData(Skill.Trained, 2)]
    [InlineData(Skill.Stunt, 2)]
    public void A_novice_takes_half_a_count_longer_from_a_knee(Skill skill, int expected) =>
        Assert.Equal((Stance.Square, expected), Change(Stance.KneelingLeft, StanceSet.Of(Stance.Square), skill));

    [Fact]
    public void A_raised_leg_comes_down_before_the_hero_sinks() =>
        // On the left leg to low is not in the table: down to a lead 2, then low 2.
        Assert.Equal((Stance.Low, 4), Change(Stance.OnLeftLeg, StanceSet.Of(Stance.Low)));

    [Theory]
    [InlineData(Stance.FloorBack, Skill.Stunt, 8)]
    [InlineData(Stance.FloorBack, Skill.Novice, 14)]
    [InlineData(Stance.FloorFront, Skill.Stunt, 5)]
    [InlineData(Stance.FloorFront, Skill.Novice, 9)]
    public void Getting_up_takes_its_time_although_the_way_over_a_knee_would_add_up_to_less(Stance floor, Skill skill, int expected) =>
        // Over a knee: back 4 + 2 = 6 (novice 6 + 3 = 9), hands and knees 2 + 2 = 4 (novice 2 + 3 = 5).
        Assert.Equal((Stance.Square, expected), Change(floor, StanceSet.Of(Stance.Square), skill));

    [Fact]
    public void Nobody_gets_from_the_back_to_one_leg() =>
        Assert.Equal(StanceTable.Never, Change(Stance.FloorBack, StanceSet.Of(Stance.OnLeftLeg)).Time);

    [Fact]
    public void No_gap_leads_down_to_the_floor() =>
        Assert.Equal(StanceTable.Never, Change(Stance.LeftLead, StanceSet.Of(Stance.FloorBack)).Time);

    [Fact]
    public void A_bound_hero_cannot_change_at_all()
    {
        var step = new Case().At("12", 90)
            .Knows(CaseBook.Hit with { Id = "bound", EndBound = Bound.Front }, CaseBook.Hit with { Id = "second", Starts = StanceSet.Of(Stance.Square) })
            .Play(Row(0, 0, "bound", "grips", "seize"), Row(20, 0, "second"));

        // Left lead to square would take 2, and the gap is 18.
        Assert.Equal((18, StanceTable.Never), (step.Gap, step.StanceTime));
    }

    [Fact]
    public void The_stance_taken_up_lasts_when_the_technique_leaves_it_unchanged()
    {
        var step = new Case().At("12", 90)
            .Knows(CaseBook.Hit with { Id = "second", Starts = StanceSet.Of(Stance.Low) })
            .Play(Row(0, 0, "hit", "reels", "blow"), Row(4, 0, "second"));

        Assert.Equal((Stance.LeftLead, Stance.Low), (step.Before.Stance, step.After.Stance));
    }
}

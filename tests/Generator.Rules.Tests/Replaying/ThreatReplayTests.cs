using Generator.Domain;
using Generator.Rules.Replaying;
using static Generator.Rules.Tests.Replaying.Case;

namespace Generator.Rules.Tests.Replaying;

/// <summary>When attackers could land a blow: ready again, in play, and walked in.</summary>
public sealed class ThreatReplayTests
{
    private static readonly Reaction Recovers = CaseBook.Reels with { Id = "recovers" };

    private static readonly Reaction Falls = CaseBook.Reels with { Id = "falls", Posture = Posture.OnBack, Fall = FallClass.Back, ReadySeconds = 3.3m, NoviceReadySeconds = 4.8m };

    private static int After(Reaction reaction, int linger = 0, int margin = 0, Skill skill = Skill.Stunt)
    {
        var stage = new Case().At("12", 90, 0, p => p with { Skill = skill }).At("6", 90).Margin(margin).Knows(reaction);
        return stage.Play(Row(0, 0, "hit", reaction.Id, "blow", linger: linger), Row(2, 1, "hit", "reels", "blow")).Threats[0];
    }

    [Theory]
    [InlineData(300, 200, 100, 4)]
    [InlineData(290, 200, 100, 4)]
    [InlineData(300, 200, 200, 7)]
    [InlineData(91, 700, 40, 1)]
    [InlineData(90, 100, 100, 0)]
    [InlineData(20, 100, 100, 0)]
    public void The_way_in_is_rounded_up_to_half_counts(int distance, int speed, int tempo, int expected) =>
        // (300 - 90) / 200 = 1.05 s: at 100, 0.3 s a half count, 3.5 -> 4; at 200, 0.15 s, 7. (290 - 90) / 200 = 1 s = 3.33 -> 4.
        // 1 cm at 7 m/s still takes one half count; from 90 cm and nearer there is no way to go.
        Assert.Equal(expected, new Case().Tempo(tempo).At("12", distance, 0, p => p with { Speed = speed }).Play(Row(0, null, "wait")).Threats[0]);

    [Fact]
    public void An_attacker_sets_off_at_the_entrance() =>
        // Entrance 7, then (190 - 90) / 100 = 1 s = 2 half counts.
        Assert.Equal(9, new Case().At("12", 190, 7).Play(Row(0, null, "wait")).Threats[0]);

    [Fact]
    public void Recovery_runs_from_the_end_of_the_move() =>
        // Ends at 2, 2 s = 4 half counts.
        Assert.Equal(6, After(Recovers));

    [Fact]
    public void Linger_is_added() => Assert.Equal(11, After(Recovers, linger: 5));

    [Fact]
    public void The_margin_is_for_falls_only()
    {
        // 2 + 3.3 s (6.6 -> 7) + 3 = 12; on the feet 2 + 4 = 6 without a margin.
        Assert.Equal(12, After(Falls, margin: 3));
        Assert.Equal(6, After(Recovers, margin: 3));
    }

    [Fact]
    public void Whoever_lies_there_already_gets_the_margin_too()
    {
        var jerks = CaseBook.Reels with { Id = "jerks", Posture = Posture.OnBack, ReadySeconds = 2.6m };

        // 2 + 2.6 s (5.2 -> 6) + 3.
        Assert.Equal(11, After(jerks, margin: 3));
    }

    [Fact]
    public void A_novice_takes_the_novices_time()
    {
        // 4.8 s = 9.6 -> 10 after 2, and the count in which the blow begins.
        Assert.Equal(14, After(Falls, skill: Skill.Novice));
        Assert.Equal(11, After(Falls, skill: Skill.Trained));
    }

    [Fact]
    public void The_way_back_counts_from_where_the_reaction_left_them()
    {
        var back = CaseBook.Reels with { Id = "back", Back = new Centimetres(80) };

        // Ready at 6; 90 + 80 = 170, so 80 cm at 1 m/s = 0.8 s = 1.6 -> 2.
        Assert.Equal(8, After(back));
    }

    [Theory]
    [InlineData("caught")]
    [InlineData("grips")]
    [InlineData("drops")]
    public void Held_gripping_and_out_attackers_threaten_nobody(string reaction)
    {
        var hold = CaseBook.Hit with { Id = "hold", LeftEnd = HandEnd.Holding };
        var step = new Case().At("12", 90).Knows(hold).Play(Row(0, 0, "hold", reaction, "blow"), Row(2, null, "wait"));

        Assert.Equal(int.MaxValue, step.Threats[0]);
    }

    [Fact]
    public void Everybody_sets_off_early_enough_for_the_first_blow_to_land()
    {
        // Bruno walks (390 - 90) / 100 = 3 s = 6 half counts, his blow lands at 0 + 2. So all set off 4 before count 1.
        var step = new Case().At("12", 390).At("6", 90).Play(Row(0, 0, "hit", "reels", "blow"));

        Assert.Equal([2, -4], step.Threats);
        Assert.Equal(2, step.Contact);
    }

    [Fact]
    public void A_first_blow_that_comes_late_enough_needs_no_lead_in() =>
        // 6 half counts to walk, the blow lands at 5 + 2 = 7.
        Assert.Equal([6, 0], new Case().At("12", 390).At("6", 90).Play(Row(5, 0, "hit", "reels", "blow")).Threats);

    [Fact]
    public void There_is_no_lead_in_for_an_attacker_with_an_entrance() =>
        // Enters at 1 and walks 6.
        Assert.Equal([7, 0], new Case().At("12", 390, 1).At("6", 90).Play(Row(0, 0, "hit", "reels", "blow")).Threats);

    [Fact]
    public void Coming_back_from_another_bearing_is_a_walk_round()
    {
        var step = new Case().At("12", 90).Play(Row(0, 0, "hit", "reels", "blow"), Row(30, 0, "hit", "reels", "blow", from: "10:30"));

        // 12 to 10:30 is 3 half hours, and that is where the attacker is then.
        Assert.Equal((3, 21, 21), (step.WalkRound, step.TargetBearing, step.After.Attackers[0].Bearing));
    }

    [Fact]
    public void The_first_opening_is_told_by_new_attacks_and_other_attackers()
    {
        var steps = new Case().At("12", 90).At("6", 90).PlayAll(
            Row(0, 0, "hit", "reels", "blow"),
            Row(2, 0, "hit", "reels"),
            Row(4, null, "wait"),
            Row(6, 0, "hit", "reels"),
            Row(20, 0, "hit", "reels", "blow"),
            Row(22, 1, "hit", "reels"));

        Assert.Equal([true, false, false, false, true, true], steps.Select(s => s.Opens));
    }

    [Fact]
    public void Overlapping_moves_have_a_negative_gap()
    {
        var step = new Case().At("12", 90).Play(Row(0, 0, "hit", "reels", "blow"), Row(1, 0, "hit"));

        Assert.Equal(-1, step.Gap);
    }

    [Fact]
    public void Falls_are_counted()
    {
        var after = new Case().At("12", 90).Knows(Falls).Play(Row(0, 0, "hit", "falls", "blow"), Row(2, 0, "hit", "reels"), Row(40, 0, "hit", "falls", "blow")).After;

        Assert.Equal(2, after.Attackers[0].Falls);
    }
}

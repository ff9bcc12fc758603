using Generator.Domain;
using Generator.Rules.Replaying;
using static Generator.Rules.Tests.Replaying.Case;

namespace Generator.Rules.Tests.Replaying;

/// <summary>How far the hero turns before a technique, how far the gap lets them, and where they face after.</summary>
public sealed class TurnReplayTests
{
    private static readonly Technique Narrow = CaseBook.Hit with { Id = "narrow", Window = new Window(-2, 2) };

    private static Step Facing(string clock, Technique technique, int gap = 0) => new Case().At(clock, 90)
        .Knows(technique)
        .Play(Row(0, null, "wait"), Row(2 + gap, 0, technique.Id, "reels", "blow"));

    [Theory]
    [InlineData("12", 0)]
    [InlineData("1", 0)]
    [InlineData("11", 0)]
    [InlineData("3", 4)]
    [InlineData("9:30", -3)]
    public void The_hero_turns_to_the_windows_edge_and_no_farther(string clock, int turn) =>
        // Window -2..2. 1 o'clock is 2, inside. 3 o'clock is 6: 6 - 2 = 4. 9:30 is -5: -5 + 2 = -3.
        Assert.Equal(turn, Facing(clock, Narrow).TurnMade);

    [Fact]
    public void Straight_behind_the_hero_turns_clockwise() =>
        // 12 - 2 = 10 either way round.
        Assert.Equal(10, Facing("6", Narrow).TurnMade);

    [Fact]
    public void The_nearer_side_of_a_lopsided_window_decides() =>
        // Window -4..2, behind: clockwise 12 - 2 = 10, the other way 12 - 4 = 8.
        Assert.Equal(-8, Facing("6", CaseBook.Hit with { Id = "narrow", Window = new Window(-4, 2) }).TurnMade);

    [Fact]
    public void A_target_beyond_the_half_circle_is_seen_from_the_other_side() =>
        // 7 o'clock is 14 half hours clockwise, that is 10 to the left.
        Assert.Equal(-10, Facing("7", Narrow).SeenFrom);

    [Fact]
    public void Facing_takes_the_turn_of_the_gap_and_the_techniques_own()
    {
        var step = Facing("3", Narrow with { Turn = new Turn(-12) }, 4);

        // 0 + 4 = 4 at the start; 4 - 12 = -8, which is 16 on the clock of 24.
        Assert.Equal((4, 16), (step.FacingStart, step.After.Facing));
    }

    [Theory]
    [InlineData(-1, 0)]
    [InlineData(0, 2)]
    [InlineData(1, 2)]
    [InlineData(2, 6)]
    [InlineData(3, 6)]
    [InlineData(4, 12)]
    [InlineData(9, 12)]
    public void The_gap_allows_a_turn(int gap, int allowed) => Assert.Equal(allowed, Facing("12", Narrow, gap).TurnAllowed);

    [Fact]
    public void A_held_wrist_allows_two_half_hours_however_long_the_gap()
    {
        var taken = CaseBook.Hit with { Id = "taken", LeftEnd = HandEnd.Held };
        var step = new Case().At("12", 90).Knows(taken).Play(Row(0, 0, "taken", "grips", "blow"), Row(10, 0, "hit"));

        // Gap 10 - 2 = 8 would allow 12.
        Assert.Equal((8, 2), (step.Gap, step.TurnAllowed));
    }

    [Fact]
    public void A_held_wrist_allows_the_turn_of_a_technique_without_a_gap_and_none_in_an_overlap()
    {
        var taken = CaseBook.Hit with { Id = "taken", LeftEnd = HandEnd.Held };
        var step = new Case().At("12", 90).Knows(taken).Play(Row(0, 0, "taken", "grips", "blow"), Row(2, 0, "hit"));
        var overlap = new Case().At("12", 90).Knows(taken).Play(Row(0, 0, "taken", "grips", "blow"), Row(1, 0, "hit"));

        Assert.Equal((2, 0), (step.TurnAllowed, overlap.TurnAllowed));
    }

    [Fact]
    public void A_bound_hero_does_not_turn()
    {
        var bound = CaseBook.Hit with { Id = "bound", EndBound = Bound.Rear };
        var step = new Case().At("12", 90).Knows(bound).Play(Row(0, 0, "bound", "grips", "seize"), Row(10, 0, "hit"));

        Assert.Equal(0, step.TurnAllowed);
    }

    [Fact]
    public void A_pause_without_a_target_turns_only_by_its_own_turn()
    {
        var look = CaseBook.Wait with { Id = "look", Window = new Window(-2, 2), Turn = new Turn(6) };
        var step = new Case().At("6", 90).Knows(look).Play(Row(0, 0, "look"));

        Assert.Equal((0, 0, 6), (step.SeenFrom, step.TurnMade, step.After.Facing));
    }
}

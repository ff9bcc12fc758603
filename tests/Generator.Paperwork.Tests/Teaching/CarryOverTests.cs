using Generator.Domain;
using Generator.Paperwork.Teaching;

namespace Generator.Paperwork.Tests.Teaching;

public class CarryOverTests
{
    private static readonly IReadOnlyList<int> Night = CarryOver.Of(Fights.Steps(Fights.Night));

    [Fact]
    public void The_last_move_carries_nothing_over() => Assert.Equal((9, 0), (Night.Count, Night[^1]));

    [Fact]
    public void Stopping_inside_an_exchange_costs_more_than_after_it()
    {
        Assert.True(Night[0] > Night[1], "After the parry Bruno is open and the knee follows.");
        Assert.True(Night[2] > Night[3], "After the catch Ines holds Wanda's arm.");
    }

    [Fact]
    public void A_hold_and_a_fallen_hero_cost_what_they_are_said_to()
    {
        var steps = Fights.Steps(Fights.Night);
        var hold = CarryOver.Of(steps[2], steps[3]);
        Assert.True(hold >= CarryOver.ExchangeGoesOn + CarryOver.Grip, $"{hold}");
        Assert.True(CarryOver.Of(steps[7], steps[8]) >= CarryOver.NotStanding, "Ines lies on her back.");
    }

    [Theory]
    [InlineData(0, CarryOver.Small)]
    [InlineData(1, 0)]
    public void A_move_that_follows_without_a_gap_is_carried_over(int gap, int cost)
    {
        var breath = Fights.Night.Moves[4] with { Start = HalfCounts.FromCounts(3) };
        var end = Fights.Steps(Fights.Night with { Moves = [breath] })[0].End;
        var steps = Fights.Steps(Fights.Night with { Moves = [breath, breath with { Start = new HalfCounts(end + gap) }] });
        Assert.Equal(gap, steps[1].Gap);
        Assert.Equal(cost, CarryOver.Of(steps[0], steps[1]));
    }
}

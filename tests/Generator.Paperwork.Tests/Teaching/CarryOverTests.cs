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
}

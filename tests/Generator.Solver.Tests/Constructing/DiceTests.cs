using FsCheck.Xunit;
using Generator.Solver.Constructing;

namespace Generator.Solver.Tests.Constructing;

public class DiceTests
{
    [Fact]
    public void Streams_do_not_change_from_machine_to_machine()
    {
        // First two outputs of SplitMix64 from seed 1234567 are 6457827717110365317 and 3203168211198807973.
        var dice = new Dice(1234567);
        Assert.Equal((int)((6457827717110365317UL >> 33) % 1000), dice.Next(1000));
        Assert.Equal((int)((3203168211198807973UL >> 33) % 1000), dice.Next(1000));
    }

    [Property]
    public bool Draws_stay_in_range(int seed, int lane)
    {
        var dice = new Dice(Dice.SeedOf(seed, lane, 3));
        return Enumerable.Range(1, 50).All(below => dice.Next(below) is var n && n >= 0 && n < below) && dice.Unit() is >= 0 and < 1;
    }

    [Fact]
    public void Lanes_rounds_and_seeds_have_streams_of_their_own()
    {
        var seeds = from seed in Enumerable.Range(0, 20) from lane in Enumerable.Range(0, 2) from round in Enumerable.Range(0, 50) select Dice.SeedOf(seed, lane, round);
        Assert.Equal(20 * 2 * 50, seeds.Distinct().Count());
    }

    [Fact]
    public void Shuffling_keeps_every_item()
    {
        var items = Enumerable.Range(0, 30).ToArray();
        new Dice(5).Shuffle(items);
        Assert.NotEqual(Enumerable.Range(0, 30), items);
        Assert.Equal(Enumerable.Range(0, 30), items.Order());
    }
}

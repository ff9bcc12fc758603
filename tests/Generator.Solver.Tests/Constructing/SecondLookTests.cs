using Generator.Solver.Constructing;

namespace Generator.Solver.Tests.Constructing;

/// <summary>A beam that dies begins again some layers before.</summary>
public class SecondLookTests
{
    private const int Layers = 200;

    [Fact]
    public void The_first_look_begins_at_the_opening_and_is_not_wider() =>
        Assert.Equal((0, 10), (new SecondLook(Layers).From, new SecondLook(Layers).Width(10)));

    [Fact]
    public void The_layers_before_the_dead_end_come_back_and_later_ones_are_gone()
    {
        var (look, open) = (new SecondLook(Layers), new List<Node>?[Layers]);
        var kept = Fill(look, 0, 100);
        Assert.True(look.Again(open));
        Assert.InRange(look.From, 1, 99);
        var back = Enumerable.Range(0, Layers).Where(l => open[l] is not null).ToList();
        Assert.Equal(look.From, back[0]);
        Assert.All(back, l => Assert.Same(kept[l], open[l]));
        Assert.True(back[^1] < 100);
        Assert.Equal(15, look.Width(10));
    }

    [Fact]
    public void Dying_in_the_same_place_goes_further_back_each_time_and_at_last_gives_up()
    {
        var (look, open, before, looks) = (new SecondLook(Layers), new List<Node>?[Layers], Layers, 0);
        for (var from = 0; ; from = look.From, looks++)
        {
            Fill(look, from, 150);
            if (!look.Again(open))
            {
                break;
            }

            Assert.True(look.From < before, $"from {look.From} after {before}");
            before = look.From;
        }

        Assert.InRange(looks, 2, 8);
    }

    [Fact]
    public void Getting_further_starts_with_small_steps_again()
    {
        var (look, open) = (new SecondLook(Layers), new List<Node>?[Layers]);
        Fill(look, 0, 80);
        Assert.True(look.Again(open));
        var step = 80 - look.From;
        Fill(look, look.From, 80);
        Assert.True(look.Again(open));
        Assert.True(80 - look.From > step);
        Fill(look, look.From, 190);
        Assert.True(look.Again(open));
        Assert.Equal(step, 190 - look.From);
    }

    /// <summary>Keeps an own list for each layer of a range.</summary>
    private static Dictionary<int, List<Node>> Fill(SecondLook look, int from, int last)
    {
        var lists = Enumerable.Range(from, last - from + 1).ToDictionary(l => l, _ => new List<Node>());
        foreach (var (layer, list) in lists)
        {
            look.Keep(layer, list);
        }

        return lists;
    }
}

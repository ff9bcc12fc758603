using Generator.Domain;

namespace Generator.Outside.Tests;

/// <summary>How fast the hero goes from mark to mark against measured walking and sprinting.</summary>
public sealed class TravelTests
{
    private static IReadOnlyList<Technique> Travels => [.. Outside.Scene().Book.Techniques.Where(t => t.Travel is not null)];

    [Fact(DisplayName = "Bohannon 1997 (Age Ageing 26:15): nobody travels faster than the fastest walk, 2.53 m/s, so that every travel move can be stopped on a mark")]
    public void No_travel_is_faster_than_the_fastest_walk() => Assert.All(Travels, t => Assert.InRange(t.Travel!.Speed, 1, 253));

    [Fact(DisplayName = "Bohannon 1997 (Age Ageing 26:15): whoever walks across goes at a comfortable walk, 1.27 to 1.46 m/s")]
    public void Who_walks_across_walks() => Assert.InRange(Travels.Single(t => t.Id == "walks-across").Travel!.Speed, 127, 146);

    [Fact(DisplayName = "Altmann et al. 2015 (J Strength Cond Res 29:2361): no travel over 5 m is sooner over than a sprint from a rolling start, 1.09 s")]
    public void Nobody_travels_as_fast_as_a_sprint() => Assert.All(Travels, t => Assert.True(t.Travel!.SecondsFor(new Centimetres(500)) >= 1.09m, t.Id));

    [Fact(DisplayName = "Common practice, no source: backwards, sideways, on the knees and in a grip the hero is slower than forwards on the feet")]
    public void Backwards_is_slower_than_forwards()
    {
        int Speed(string id) => Travels.First(t => t.BaseId == id).Travel!.Speed;
        Assert.All(["backs-away", "backs-from", "parries-back", "fades-back", "shuffles-across", "dragged-by-wrist", "dragged-by-collar", "dragged-backwards", "crawls-away", "scrambles-back"], id => Assert.True(Speed(id) < Speed("walks-across"), id));
        Assert.True(Speed("walks-across") < Speed("dashes-across"));
    }

    [Fact(DisplayName = "There are at least 18 travel moves, and of each kind at least two")]
    public void There_are_enough_of_every_kind()
    {
        var bases = Travels.DistinctBy(t => t.BaseId, StringComparer.Ordinal).ToList();
        Assert.True(bases.Count >= 18);
        Assert.All(Enum.GetValues<TravelKind>(), kind => Assert.True(bases.Count(t => t.Travel!.How == kind) >= 2));
    }
}

using System.Globalization;
using Generator.Domain;
using Generator.Library.Marking;
using Generator.Library.Reading;
using Newtonsoft.Json.Linq;

namespace Generator.Library.Files;

/// <summary>Reads where a way of marks begins and where it ends, and says why there is none.</summary>
internal static class WayEnds
{
    /// <summary>One end; null after a problem.</summary>
    /// <param name="way">The way.</param>
    /// <param name="field">Which end.</param>
    /// <param name="floor">The floor.</param>
    public static WayEnd? Of(ObjectReader way, string field, FloorPlan floor)
    {
        if (!way.Has(field))
        {
            way.Missing(field, $"\"{field}\": \"door\"");
            return null;
        }

        return way.Token(field) is JObject ? Place(way, field, floor) : Named(way, field, floor);
    }

    /// <summary>Why a way has no marks, in words of the floor, and what to try.</summary>
    public static (string What, string Maybe) Why(WayFault fault, WayEnd from, WayEnd to, int? count, Centimetres least) => fault switch
    {
        { NoFirst: true } => ($"No place for a mark was found near {from.Text}.", "Maybe clear something away, or begin at a place: { \"x\": 2, \"y\": 3 }."),
        { IsReached: false } => ($"No clear way was found from {from.Text} to {to.Text}.", "Maybe something stands between them that can be moved; whoever goes from mark to mark goes round it."),
        { Counts: [] } when fault.Length < 2 * least.Value => ($"It is too near from {from.Text} to {to.Text} for two marks, which are {least} apart at least.", "Maybe the fight stays on one mark; leave \"marks\" out."),
        { Counts: [] } => ($"No row of up to {Number(HeroMark.Most)} marks was found from {from.Text} to {to.Text} that travel moves could follow.", "Maybe name marks yourself, or cut the fight in two."),
        _ => ($"No row of {Number(count!.Value)} marks was found from {from.Text} to {to.Text} that leads straight and clear from each to the next, always nearer to the end.", $"Maybe ask for {string.Join(" or ", fault.Counts.Select(Number))}, or leave \"count\" out."),
    };

    private static WayEnd? Place(ObjectReader way, string field, FloorPlan floor)
    {
        var place = way.Object(field)!;
        foreach (var side in (ReadOnlySpan<string>)["x", "y"])
        {
            if (!place.Has(side))
            {
                place.Missing(side, $"\"{side}\": 2");
            }
        }

        var (x, y) = (place.Metres("x", Measures.Place), place.Metres("y", Measures.Place));
        place.Finish();
        if (x is not { } across || y is not { } along)
        {
            return null;
        }

        if (MarkRule.WhyNotA(new HeroMark(string.Empty, across, along), floor) is var (what, maybe))
        {
            way.Refuse(field, $"A mark at {across}, {along} {what}.", maybe);
            return null;
        }

        return new WayEnd($"{across}, {along}", across.Value, along.Value, null, IsExact: true);
    }

    private static WayEnd? Named(ObjectReader way, string field, FloorPlan floor)
    {
        if (way.Text(field) is not { } name)
        {
            return null;
        }

        if (floor.WaysIn.FirstOrDefault(w => IsCalled(w.Name, name)) is { } door)
        {
            return new WayEnd(InSentence.Of(door.Name), door.X.Value, door.Y.Value, null, IsExact: false);
        }

        if (floor.Obstacles.FirstOrDefault(o => IsCalled(o.Name, name)) is { } thing)
        {
            return new WayEnd(thing.InWords, thing.X.Value, thing.Y.Value, thing, IsExact: false);
        }

        var known = floor.WaysIn.Select(w => w.Name).Concat(floor.Obstacles.Select(o => o.Name)).Distinct(StringComparer.OrdinalIgnoreCase).ToList();
        var place = $"a place: {{ \"x\": 2, \"y\": 3 }}";
        way.Refuse(field, $"Nothing on the floor is called {FieldText.Quote(name)}, and no way in.", known.Count == 0 ? $"Maybe write {place}." : NearestWords.Maybe(name, known, NearestWords.OneOf(known)));
        return null;
    }

    private static bool IsCalled(string name, string word) => string.Equals(name, word, StringComparison.OrdinalIgnoreCase) || string.Equals(InSentence.Of(name), InSentence.Of(word), StringComparison.OrdinalIgnoreCase);

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}

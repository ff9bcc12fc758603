using System.Globalization;
using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Files;

/// <summary>Reads the ways in of a floor: on or beside its edge, or behind an obstacle that hides them.</summary>
internal static class WaysInReader
{
    /// <summary>On the floor, a way in is no farther than this from the edge, or from an obstacle. Common practice, no source.</summary>
    private const int Beside = 50;

    public static IReadOnlyList<WayIn> Of(ObjectReader reader, FloorPlan floor)
    {
        var ways = new List<WayIn>();
        foreach (var entry in reader.Objects("waysIn"))
        {
            foreach (var field in (ReadOnlySpan<string>)["x", "y"])
            {
                if (!entry.Has(field))
                {
                    entry.Missing(field, $"\"{field}\": 0");
                }
            }

            var way = new WayIn(
                entry.Name("name") ?? "way in " + (ways.Count + 1).ToString(CultureInfo.InvariantCulture),
                entry.Metres("x", Measures.WayIn) ?? default,
                entry.Metres("y", Measures.WayIn) ?? default);
            if (ways.Any(w => string.Equals(w.Name, way.Name, StringComparison.OrdinalIgnoreCase)))
            {
                entry.Refuse("name", $"Two ways in are called {FieldText.Quote(way.Name)}.", "Maybe number them.");
            }
            else if (Fault(way, floor) is var (what, maybe))
            {
                entry.Refuse("name", $"The way in {FieldText.Quote(way.Name)} {what}.", maybe);
            }

            ways.Add(way);
            entry.Finish();
        }

        return ways;
    }

    private static (string What, string Maybe)? Fault(WayIn way, FloorPlan floor)
    {
        var (x, y) = (way.X.Value, way.Y.Value);
        var beyond = Math.Max(Math.Max(-x, x - floor.Width.Value), Math.Max(-y, y - floor.Depth.Value));
        if (beyond > 300)
        {
            return ("lies more than 3 m off the floor", "Maybe x and y are swapped, or the floor is larger.");
        }

        if (floor.Obstacles.FirstOrDefault(o => o.Away(x, y) == 0) is { } inside)
        {
            return ($"lies inside the obstacle {FieldText.Quote(inside.Name)}", "Maybe put it beside it.");
        }

        return beyond < -Beside && floor.Obstacles.All(o => o.Away(x, y) > Beside)
            ? ("lies in the middle of the floor", "Maybe give a place on or beside the edge, or beside the obstacle that hides it.")
            : null;
    }
}

using System.Globalization;
using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Files;

/// <summary>Reads a thing on the floor of a brief: where it stands, and of what kind it is.</summary>
internal static class ObstacleReader
{
    /// <param name="reader">The thing.</param>
    /// <param name="index">Its number in the list, from 0.</param>
    /// <param name="floor">The floor without it.</param>
    /// <param name="things">Kinds that the library knows.</param>
    /// <param name="isOffMark">It must not stand on the mark.</param>
    public static Obstacle Of(ObjectReader reader, int index, FloorPlan floor, ThingTable things, bool isOffMark)
    {
        reader.NeedsBox("0.5");
        var obstacle = new Obstacle(
            reader.Name("name") ?? "obstacle " + (index + 1).ToString(CultureInfo.InvariantCulture),
            reader.Metres("x", Measures.Place) ?? floor.Width,
            reader.Metres("y", Measures.Place) ?? floor.Depth,
            reader.Metres("width", Measures.Thing) ?? new Centimetres(1),
            reader.Metres("depth", Measures.Thing) ?? new Centimetres(1))
        {
            Kind = Kind(reader, things),
            Height = reader.Metres("height", Measures.ThingHeight),
            Rated = reader.Flag("rated"),
            Padded = reader.Flag("padded"),
        };
        if (isOffMark && obstacle.X <= floor.MarkX && floor.MarkX <= obstacle.X + obstacle.Width && obstacle.Y <= floor.MarkY && floor.MarkY <= obstacle.Y + obstacle.Depth)
        {
            reader.Refuse("name", $"The obstacle {FieldText.Quote(obstacle.Name)} stands on the mark.", "Maybe x and y are swapped; they are the corner nearest the corner between 6 and 9.");
        }
        else if (obstacle.X > floor.Width || obstacle.Y > floor.Depth)
        {
            reader.Refuse("name", $"The obstacle {FieldText.Quote(obstacle.Name)} stands off the floor.", "Maybe x and y are swapped, or the floor is larger.");
        }

        reader.Finish();
        return obstacle;
    }

    private static string? Kind(ObjectReader reader, ThingTable things)
    {
        if (reader.Text("kind") is not { } word)
        {
            return null;
        }

        if (things.Find(word) is { } kind)
        {
            return kind.Id;
        }

        var known = things.Kinds.SelectMany(k => k.Aliases.Prepend(k.Id)).ToList();
        reader.Refuse("kind", $"The library knows no kind of thing called {FieldText.Quote(word)}.", NearestWords.Maybe(word, known, known.Count == 0 ? "Maybe leave it out." : $"Maybe one of these is meant: {string.Join(", ", things.Kinds.Select(k => k.Id))}; or leave it out."));
        return null;
    }
}

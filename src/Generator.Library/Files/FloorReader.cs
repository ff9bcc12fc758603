using System.Globalization;
using Generator.Domain;
using Generator.Library.Marking;
using Generator.Library.Reading;

namespace Generator.Library.Files;

/// <summary>Reads the floor, the cameras and the audience of a brief.</summary>
internal static class FloorReader
{
    /// <param name="reader">The floor; null where the brief has none.</param>
    /// <param name="things">Kinds of things that the library knows.</param>
    /// <param name="first">Where the fight begins if the brief names marks.</param>
    /// <param name="isFree">Where it begins is chosen later, unless the floor says it: the middle may be taken up.</param>
    public static FloorPlan Floor(ObjectReader? reader, ThingTable things, HeroMark? first = null, bool isFree = false)
    {
        var blank = first is null ? new FloorPlan() : new FloorPlan { MarkX = first.X, MarkY = first.Y };
        if (reader is null)
        {
            return blank;
        }

        var width = reader.Metres("width", Measures.FloorSide) ?? blank.Width;
        var depth = reader.Metres("depth", Measures.FloorSide) ?? blank.Depth;
        var mark = reader.Numbers("mark", 2, Measures.Place);
        if (first is not null && mark is not null && (Centimetres.FromMetres(mark[0]) != first.X || Centimetres.FromMetres(mark[1]) != first.Y))
        {
            reader.Refuse("mark", $"The fight begins at the first of the marks, {FieldText.Quote(first.Name)}, and the floor names another place.", "Maybe leave it out here.");
        }

        var floor = new FloorPlan
        {
            Width = width,
            Depth = depth,
            MarkX = first?.X ?? (mark is null ? new Centimetres(width.Value / 2) : Centimetres.FromMetres(mark[0])),
            MarkY = first?.Y ?? (mark is null ? new Centimetres(depth.Value / 2) : Centimetres.FromMetres(mark[1])),
            Surface = reader.Word<Surface>("surface") ?? blank.Surface,
        };
        if (first is null && (floor.MarkX > width || floor.MarkY > depth))
        {
            reader.Refuse("mark", $"The mark lies off the floor, which is {width} wide and {depth} deep.", "Maybe width and depth are swapped.");
        }

        floor = floor with { Obstacles = [.. reader.Objects("obstacles").Select((o, i) => ObstacleReader.Of(o, i, floor, things, isOffMark: !isFree || mark is not null))] };
        floor = floor with { Mats = MatsReader.Of(reader, floor), WaysIn = WaysInReader.Of(reader, floor) };
        reader.Finish();
        return floor;
    }

    /// <summary>Whether the place at this bearing and distance from the mark lies on the floor, to the centimetre.</summary>
    public static bool Contains(FloorPlan floor, Bearing bearing, Centimetres distance)
    {
        var (dx, dy) = bearing.Direction;
        var x = Math.Round(floor.MarkX.Value + (distance.Value * dx));
        var y = Math.Round(floor.MarkY.Value + (distance.Value * dy));
        return x >= 0 && y >= 0 && x <= floor.Width.Value && y <= floor.Depth.Value;
    }

    /// <summary>The cameras, then one for each side of the audience: 10 m away, eyes at 1.2 m.</summary>
    public static IReadOnlyList<Camera> Cameras(ObjectReader root)
    {
        var cameras = new List<Camera>();
        foreach (var reader in root.Objects("cameras"))
        {
            var name = reader.Name("name") ?? "camera " + (cameras.Count + 1).ToString(CultureInfo.InvariantCulture);
            if (cameras.Any(c => string.Equals(c.Name, name, StringComparison.OrdinalIgnoreCase)))
            {
                reader.Refuse("name", $"Two cameras are called {FieldText.Quote(name)}.", "Maybe give one of them another letter.");
            }

            if (!reader.Has("bearing"))
            {
                reader.Missing("bearing", "\"bearing\": \"6\"");
            }

            var camera = new Camera(
                name,
                reader.Clock("bearing") ?? default,
                reader.Metres("distance", Measures.CameraDistance) ?? new Centimetres(500),
                reader.Metres("height", Measures.CameraHeight) ?? new Centimetres(150));
            if (camera.IsOnTheGround && camera.Distance < MarkRule.OnTheMark)
            {
                reader.Refuse("distance", $"The camera {FieldText.Quote(name)} and its operator stand {camera.Distance} from the mark, on the hero's own place.", $"Maybe move it out to {MarkRule.OnTheMark} or more, or hang it higher than {Camera.Highest}.");
            }

            cameras.Add(camera);
            reader.Finish();
        }

        foreach (var (value, path) in root.Entries("audience"))
        {
            if (FieldForms.ClockOf(root, value, path) is not { } bearing)
            {
                continue;
            }

            var side = new Camera("audience " + bearing.ToClockText(), bearing, new Centimetres(1000), new Centimetres(120));
            if (cameras.Any(c => string.Equals(c.Name, side.Name, StringComparison.OrdinalIgnoreCase)))
            {
                root.Refuse(value, path, $"The audience at {bearing} is given twice.", "Maybe one of the two can go.");
            }

            cameras.Add(side);
        }

        return cameras;
    }
}

using System.Globalization;
using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Files;

/// <summary>Reads the marks of a brief: places on the floor, clear of its edge and of what stands on it.</summary>
internal static class MarksReader
{
    /// <summary>Two marks are no nearer to one another than this: nearer, a step of a technique does. Common practice, no source.</summary>
    private const int Apart = 50;

    /// <summary>Room for the hero round a mark. Common practice, no source.</summary>
    private const int Room = 30;

    /// <summary>The marks as they are written.</summary>
    public static IReadOnlyList<(HeroMark Mark, ObjectReader Entry)> Read(ObjectReader root)
    {
        var marks = new List<(HeroMark Mark, ObjectReader Entry)>();
        if (root.Token("marks") is Newtonsoft.Json.Linq.JValue)
        {
            root.Refuse("marks", "The marks must be a list of places; a fight is not yet drafted for a number of marks or a way.", "Maybe write \"marks\": [ { \"name\": \"door\", \"x\": 2, \"y\": 3 }, { \"name\": \"window\", \"x\": 6, \"y\": 4 } ].");
            return marks;
        }

        foreach (var entry in root.Objects("marks"))
        {
            foreach (var field in (ReadOnlySpan<string>)["x", "y"])
            {
                if (!entry.Has(field))
                {
                    entry.Missing(field, $"\"{field}\": 2");
                }
            }

            var name = entry.Name("name") ?? "mark " + (marks.Count + 1).ToString(CultureInfo.InvariantCulture);
            var mark = new HeroMark(name, entry.Metres("x", Measures.Place) ?? default, entry.Metres("y", Measures.Place) ?? default);
            if (marks.Any(m => string.Equals(m.Mark.Name, name, StringComparison.OrdinalIgnoreCase)))
            {
                entry.Refuse("name", $"Two marks are called {FieldText.Quote(name)}.", "Maybe number them.");
            }

            marks.Add((mark, entry));
            entry.Finish();
        }

        if (marks.Count > HeroMark.Most)
        {
            root.Refuse("marks", $"There are {marks.Count} marks; there may be {HeroMark.Most}.", "Maybe cut the fight in two.");
        }

        return marks;
    }

    /// <summary>What is wrong with them on this floor.</summary>
    public static void Check(IReadOnlyList<(HeroMark Mark, ObjectReader Entry)> marks, FloorPlan floor, IReadOnlyList<Camera> cameras)
    {
        for (var i = 0; i < marks.Count; i++)
        {
            var (mark, entry) = marks[i];
            if (WhyNotA(mark, floor) is var (what, maybe))
            {
                entry.Refuse("name", $"The mark {FieldText.Quote(mark.Name)} {what}.", maybe);
            }
            else if (marks.Take(i).FirstOrDefault(m => Between(m.Mark, mark) < Apart).Mark is { } near)
            {
                entry.Refuse("name", $"The marks {FieldText.Quote(near.Name)} and {FieldText.Quote(mark.Name)} are less than {new Centimetres(Apart)} apart.", "Maybe one of the two can go; a technique's own step does as much.");
            }
            else if (cameras.FirstOrDefault(c => c.IsOnTheGround && IsOn(mark, c, floor)) is { } camera)
            {
                entry.Refuse("name", $"The mark {FieldText.Quote(mark.Name)} lies where {camera.Text} and its operator stand.", $"Maybe move one of them, or hang the camera higher than {Camera.Highest}.");
            }
        }
    }

    /// <summary>What is wrong with a mark on a floor; null for nothing.</summary>
    public static (string What, string Maybe)? WhyNotA(HeroMark mark, FloorPlan floor)
    {
        var (x, y) = (mark.X.Value, mark.Y.Value);
        if (Math.Min(Math.Min(x, floor.Width.Value - x), Math.Min(y, floor.Depth.Value - y)) < Room)
        {
            return ($"lies off the floor, or less than {new Centimetres(Room)} from its edge", "Maybe x and y are swapped, or the floor is larger.");
        }

        return floor.Obstacles.FirstOrDefault(o => Away(o, x, y) < Room) is { } thing
            ? ($"lies in the obstacle {FieldText.Quote(thing.Name)}, or less than {new Centimetres(Room)} from it", "Maybe put it beside it.")
            : null;
    }

    private static int Away(Obstacle o, int x, int y) => Math.Max(Math.Max(o.X.Value - x, x - o.X.Value - o.Width.Value), Math.Max(o.Y.Value - y, y - o.Y.Value - o.Depth.Value));

    private static double Between(HeroMark one, HeroMark other) => Math.Sqrt(Math.Pow(one.X.Value - other.X.Value, 2) + Math.Pow(one.Y.Value - other.Y.Value, 2));

    private static bool IsOn(HeroMark mark, Camera camera, FloorPlan floor)
    {
        var (dx, dy) = camera.Bearing.Direction;
        var (x, y) = (floor.MarkX.Value + (camera.Distance.Value * dx) - mark.X.Value, floor.MarkY.Value + (camera.Distance.Value * dy) - mark.Y.Value);
        return Math.Sqrt((x * x) + (y * y)) < FloorReader.OnTheMark.Value;
    }
}

using System.Globalization;
using Generator.Domain;
using Generator.Library.Marking;
using Generator.Library.Reading;

namespace Generator.Library.Files;

/// <summary>Reads the marks of a brief: places on the floor, clear of its edge and of what stands on it.</summary>
internal static class MarksReader
{
    /// <summary>The marks as they are written.</summary>
    public static IReadOnlyList<(HeroMark Mark, ObjectReader Entry)> Read(ObjectReader root)
    {
        var marks = new List<(HeroMark Mark, ObjectReader Entry)>();
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
            if (MarkRule.WhyNotA(mark, floor) is var (what, maybe))
            {
                entry.Refuse("name", $"The mark {FieldText.Quote(mark.Name)} {what}.", maybe);
            }
            else if (marks.Take(i).FirstOrDefault(m => MarkRule.Between(m.Mark, mark) < MarkRule.Apart).Mark is { } near)
            {
                entry.Refuse("name", $"The marks {FieldText.Quote(near.Name)} and {FieldText.Quote(mark.Name)} are less than {new Centimetres(MarkRule.Apart)} apart.", "Maybe one of the two can go; a technique's own step does as much.");
            }
            else if (MarkRule.On(mark, cameras, floor) is { } camera)
            {
                entry.Refuse("name", $"The mark {FieldText.Quote(mark.Name)} lies where {camera.Text} and its operator stand.", $"Maybe move one of them, or hang the camera higher than {Camera.Highest}.");
            }
        }
    }
}

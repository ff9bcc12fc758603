using System.Globalization;
using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Files;

/// <summary>Reads the mats of a floor: each lies on it as a whole.</summary>
internal static class MatsReader
{
    public static IReadOnlyList<Mat> Of(ObjectReader reader, FloorPlan floor)
    {
        var mats = new List<Mat>();
        foreach (var entry in reader.Objects("mats"))
        {
            entry.NeedsBox("2");
            var mat = new Mat(
                entry.Name("name") ?? "mat " + (mats.Count + 1).ToString(CultureInfo.InvariantCulture),
                entry.Metres("x", Measures.Place) ?? default,
                entry.Metres("y", Measures.Place) ?? default,
                entry.Metres("width", Measures.Mat) ?? new Centimetres(5),
                entry.Metres("depth", Measures.Mat) ?? new Centimetres(5));
            if (mats.Any(m => string.Equals(m.Name, mat.Name, StringComparison.OrdinalIgnoreCase)))
            {
                entry.Refuse("name", $"Two mats are called {FieldText.Quote(mat.Name)}.", "Maybe number them.");
            }
            else if (mat.X + mat.Width > floor.Width || mat.Y + mat.Depth > floor.Depth)
            {
                entry.Refuse("name", $"The mat {FieldText.Quote(mat.Name)} lies over the edge of the floor, which is {floor.Width} wide and {floor.Depth} deep.", "Maybe x and y are swapped; they are the corner nearest the corner between 6 and 9.");
            }

            mats.Add(mat);
            entry.Finish();
        }

        if (mats.Count > Mat.Most)
        {
            reader.Refuse("mats", FormattableString.Invariant($"There are {mats.Count} mats; there may be {Mat.Most}."), "Maybe write those that are joined as one.");
        }

        return mats;
    }
}

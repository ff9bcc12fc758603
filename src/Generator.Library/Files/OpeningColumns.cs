using System.Globalization;
using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Files;

/// <summary>
/// Where the attackers open, in a CSV routine: three columns that any one row of an attacker may fill. A row that fills nothing else
/// is no move.
/// </summary>
internal static class OpeningColumns
{
    public const string Bearing = "opening bearing";
    public const string Distance = "opening distance";
    public const string Entrance = "entrance";

    public static IReadOnlyList<string> All { get; } = [Bearing, Distance, Entrance];

    /// <summary>The row says where somebody opens, and nothing of a move.</summary>
    public static bool IsAllOf(RoutineRow row) =>
        All.Any(c => row.Text(c) is not null) && RoutineRow.Fields.All(f => string.Equals(f, "attacker", StringComparison.Ordinal) || string.IsNullOrEmpty(row.Text(f)));

    /// <summary>What the rows say, by number in the cast.</summary>
    public static IReadOnlyDictionary<int, Place> Places(IEnumerable<RoutineRow> rows, Cast cast)
    {
        var places = new Dictionary<int, Place>();
        foreach (var row in rows.Where(r => All.Any(c => r.Text(c) is not null)))
        {
            var place = new Place(BearingOf(row), DistanceOf(row), EntranceOf(row));
            if (row.Text("attacker") is not { } name)
            {
                row.Refuse("attacker", "The row does not say who opens there.", NearestWords.OneOf(cast.Names));
                continue;
            }

            var index = cast.Find(name);
            if (index < 0)
            {
                row.Refuse("attacker", Cast.Unknown(name), cast.Advice(name));
            }
            else if (!places.TryAdd(index, place))
            {
                row.Refuse("attacker", $"{cast.Names[index]} is placed twice.", "Maybe one of the two can go; whoever comes back from another bearing has it in the column from.");
            }
        }

        return places;
    }

    private static Bearing? BearingOf(RoutineRow row)
    {
        if (row.Text(Bearing) is not { } text)
        {
            return null;
        }

        if (Domain.Bearing.TryParse(text, out var bearing))
        {
            return bearing;
        }

        row.Refuse(Bearing, $"{FieldText.Quote(text)} is not a clock position.", FieldForms.ClockAdvice);
        return null;
    }

    private static Centimetres? DistanceOf(RoutineRow row)
    {
        if (row.Text(Distance) is not { } text)
        {
            return null;
        }

        if (decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var metres) && Measures.Opening.Allows(metres))
        {
            return Centimetres.FromMetres(metres);
        }

        row.Refuse(Distance, $"{FieldText.Quote(text)} is not {Measures.Opening.Range}.", Measures.Opening.Advice);
        return null;
    }

    private static HalfCounts? EntranceOf(RoutineRow row)
    {
        if (row.Text(Entrance) is not { } text)
        {
            return null;
        }

        if (HalfCounts.TryParseCount(text, out var entrance))
        {
            return entrance;
        }

        row.Refuse(Entrance, $"{FieldText.Quote(text)} is not a count.", FieldForms.CountAdvice);
        return null;
    }
}

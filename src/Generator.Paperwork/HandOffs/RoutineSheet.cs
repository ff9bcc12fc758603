using System.Globalization;
using Generator.Domain;
using Generator.Library.Files;
using Newtonsoft.Json.Linq;

namespace Generator.Paperwork.HandOffs;

/// <summary>The routine as it is read: the columns and words of a CSV routine, so that the sheet, saved as CSV, can be audited.</summary>
public static class RoutineSheet
{
    /// <summary>Columns of counts: a whole one is a number there, "4&amp;" is not.</summary>
    private static readonly string[] Counts = ["count", "entrance"];

    public static Table Of(Routine routine, PaperHead head)
    {
        var columns = RoutineTable.ColumnsOf(routine);
        return new Table("Routine", columns, [.. RoutineTable.Rows(routine).Select(r => (IReadOnlyList<Cell>)[.. r.Select((v, c) => CellOf(v, Counts.Contains(columns[c])))])]).Warned(head, RoutineTable.Warning);
    }

    private static Cell CellOf(JValue? value, bool isCount) => value?.Value switch
    {
        null => Cell.Empty,
        string text when isCount && int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var count) => Cell.Number(count),
        string text => Cell.Of(text),
        decimal number => Cell.Number(number, number.Scale),
        int whole => Cell.Number(whole),
        long whole => Cell.Number(whole),
        var other => throw new ArgumentException($"No cell is made of {other.GetType().Name}.", nameof(value)),
    };
}

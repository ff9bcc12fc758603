using Generator.Domain;
using Generator.Library.Files;
using Newtonsoft.Json.Linq;

namespace Generator.Paperwork.HandOffs;

/// <summary>The routine as it is read: the columns and words of a CSV routine, so that the sheet, saved as CSV, can be audited.</summary>
public static class RoutineSheet
{
    public static Table Of(Routine routine, PaperHead head) =>
        new Table("Routine", RoutineTable.ColumnsOf(routine), [.. RoutineTable.Rows(routine).Select(r => (IReadOnlyList<Cell>)[.. r.Select(CellOf)])]).Warned(head, RoutineTable.Warning);

    private static Cell CellOf(JValue? value) => value?.Value switch
    {
        null => Cell.Empty,
        string text => Cell.Of(text),
        decimal number => Cell.Number(number, number.Scale),
        int whole => Cell.Number(whole),
        long whole => Cell.Number(whole),
        var other => throw new ArgumentException($"No cell is made of {other.GetType().Name}.", nameof(value)),
    };
}

using System.Globalization;
using MiniExcelLibs;

namespace Generator.Testing;

/// <summary>Reads a workbook with MiniExcel, which had no part in writing it.</summary>
public static class SheetReading
{
    /// <summary>The cells of a sheet row by row, numbers without needless digits, nothing as an empty text.</summary>
    public static IReadOnlyList<IReadOnlyList<string>> Of(byte[] workbook, string sheet)
    {
        using var stream = new MemoryStream(workbook);
        return [.. stream.Query(useHeaderRow: false, sheetName: sheet).Cast<IDictionary<string, object?>>().Select(r => (IReadOnlyList<string>)[.. r.Values.Select(Text)])];
    }

    private static string Text(object? value) => value switch
    {
        null => string.Empty,
        string text => text,
        double number => ((decimal)number).ToString("0.###", CultureInfo.InvariantCulture),
        _ => throw new ArgumentException($"{value} is neither a text nor a number but {value.GetType().Name}.", nameof(value)),
    };
}

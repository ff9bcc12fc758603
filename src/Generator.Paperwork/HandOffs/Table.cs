using System.Globalization;
using System.Text;
using Generator.Library.Files;

namespace Generator.Paperwork.HandOffs;

/// <summary>A table for spreadsheets. Text that a spreadsheet would run as a formula is made harmless in CSV; a workbook says itself that it is text.</summary>
/// <param name="Name">Of the sheet.</param>
/// <param name="Columns">Headings.</param>
/// <param name="Rows">As many cells a row as there are columns.</param>
public sealed record Table(string Name, IReadOnlyList<string> Columns, IReadOnlyList<IReadOnlyList<Cell>> Rows)
{
    /// <summary>RFC 4180 text with a header line.</summary>
    public string ToCsv()
    {
        var text = new StringBuilder();
        CsvText.Append(text, Columns);
        foreach (var row in Rows)
        {
            CsvText.Append(text, row.Select(c => c.Value is { } number ? number.ToString("0.###", CultureInfo.InvariantCulture) : CsvText.Harmless(c.Text)));
        }

        return text.ToString();
    }
}

using System.Globalization;
using System.Text;
using Generator.Library.Files;
using Generator.Paperwork.Text;

namespace Generator.Paperwork.HandOffs;

/// <summary>A table for spreadsheets. Text that a spreadsheet would run as a formula is made harmless in CSV; a workbook says itself that it is text.</summary>
/// <param name="Name">Of the sheet.</param>
/// <param name="Columns">Headings.</param>
/// <param name="Rows">As many cells a row as there are columns.</param>
public sealed record Table(string Name, IReadOnlyList<string> Columns, IReadOnlyList<IReadOnlyList<Cell>> Rows)
{
    /// <summary>How many of the last columns say what stands at the edge of every printed page anyway.</summary>
    public int Aside { get; init; }

    /// <summary>Whether the first column says that this must not be performed.</summary>
    public bool IsForbidden { get; init; }

    /// <summary>With one more column, whose first cell says what stands on every paper; a table without rows gets one for it.</summary>
    public Table WithCaution()
    {
        IReadOnlyList<IReadOnlyList<Cell>> rows = Rows.Count > 0 ? Rows : [[.. Columns.Select(_ => Cell.Empty)]];
        return this with { Columns = [.. Columns, "caution"], Rows = [.. rows.Select((r, i) => (IReadOnlyList<Cell>)[.. r, i == 0 ? Cell.Of(Cautions.Sheet) : Cell.Empty])], Aside = Aside + 1 };
    }

    /// <summary>
    /// The same with what the head of a paper says in three last columns of every row: rows are sorted, filtered and copied away from any heading. What must not
    /// be performed says so in a first column too, since the last ones lie off the screen.
    /// </summary>
    public Table Under(PaperHead head)
    {
        IReadOnlyList<Cell> last = [Cell.Of(head.Title), Cell.Of(head.Identity), Cell.Of(head.Warning ?? string.Empty)];
        var warned = Warned(head, PaperHead.Sign);
        return warned with { Columns = [.. warned.Columns, "routine", "version", "warning"], Rows = [.. warned.Rows.Select(r => (IReadOnlyList<Cell>)[.. r, .. last])], Aside = last.Count };
    }

    /// <summary>The same; where it must not be performed, with a first column that says so in every row.</summary>
    /// <param name="head">Of the routine.</param>
    /// <param name="column">What that column is called.</param>
    public Table Warned(PaperHead head, string column) => head.Warning is null ? this : this with
    {
        Columns = [column, .. Columns],
        Rows = [.. Rows.Select(r => (IReadOnlyList<Cell>)[Cell.Of($"{PaperHead.Sign} {PaperHead.Forbidden}"), .. r])],
        IsForbidden = true,
    };

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

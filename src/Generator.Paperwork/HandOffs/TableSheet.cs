using System.Globalization;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Spreadsheet;
using Page = Generator.Paperwork.Text.Page;

namespace Generator.Paperwork.HandOffs;

/// <summary>
/// A table as a sheet: a heading that stays in sight and filters, columns as wide as what they hold, one page wide on paper across, with title, version and page
/// number under it. The columns aside are not printed, since they say the same.
/// </summary>
internal static class TableSheet
{
    /// <summary>Letters of a foot that a workbook may hold are 255, marks and number among them, and a doubled mark counts twice.</summary>
    private const int MostInAFoot = 110;

    /// <summary>Widths in letters: of any column at the least, of one whose texts wrap at the most, of the one that warns, of one aside.</summary>
    private const int Narrowest = 4, Widest = 24, Narrow = 16, Aside = 22;

    /// <summary>So many letters stand beside one another on a sheet of paper that lies across, A4 or Letter, at 70 % of their size: smaller ones are hard to read.</summary>
    public const int Across = 190;

    /// <summary>What a cell needs beside its letters, and a heading for the arrow of its filter.</summary>
    private const int Rim = 1, Arrow = 3;

    public static Worksheet Of(Table table, PaperHead head, bool isFirst)
    {
        var last = Address(table.Columns.Count - 1, table.Rows.Count);
        return new Worksheet(
            new SheetProperties(new PageSetupProperties { FitToPage = true }) { TabColor = table.IsForbidden ? new TabColor { Rgb = "FF8C1420" } : null },
            new SheetDimension { Reference = $"A1:{last}" },
            new SheetViews(View(table.IsForbidden ? 2 : 1, isFirst)),
            new Columns(Widths(table).Select((w, i) => new Column { Min = (uint)i + 1, Max = (uint)i + 1, Width = w, CustomWidth = true })),
            new SheetData(table.Rows.Select((r, i) => Row(table, i + 1, r)).Prepend(Row(table, 0, [.. table.Columns.Select(Cell.Of)]))),
            new AutoFilter { Reference = $"A1:{last}" },
            new PrintOptions { GridLines = true },
            new PageMargins { Left = 0.5, Right = 0.5, Top = 0.7, Bottom = 0.7, Header = 0.3, Footer = 0.3 },
            new PageSetup { Orientation = OrientationValues.Landscape, FitToWidth = 1, FitToHeight = 0 },
            Edges(head),
            new IgnoredErrors(new IgnoredError { SequenceOfReferences = new ListValue<StringValue>([$"A1:{last}"]), NumberStoredAsText = true }));
    }

    /// <summary>What a workbook knows of the sheet by name: what is printed, the heading on each page, what the filter goes over.</summary>
    /// <param name="table">The table.</param>
    /// <param name="number">Of the sheet, from 0.</param>
    public static IEnumerable<DefinedName> Names(Table table, uint number) =>
    [
        new DefinedName($"'{table.Name}'!$A$1:{Fixed(table.Columns.Count - 1, table.Rows.Count)}") { Name = "_xlnm._FilterDatabase", LocalSheetId = number, Hidden = true },
        new DefinedName($"'{table.Name}'!$A$1:{Fixed(table.Columns.Count - 1 - table.Aside, table.Rows.Count)}") { Name = "_xlnm.Print_Area", LocalSheetId = number },
        new DefinedName($"'{table.Name}'!$1:$1") { Name = "_xlnm.Print_Titles", LocalSheetId = number },
    ];

    private static SheetView View(int columns, bool isFirst)
    {
        var corner = Address(columns, 1);
        return new SheetView(
            new Pane { HorizontalSplit = columns, VerticalSplit = 1, TopLeftCell = corner, ActivePane = PaneValues.BottomRight, State = PaneStateValues.Frozen },
            new Selection { Pane = PaneValues.BottomRight, ActiveCell = corner, SequenceOfReferences = new ListValue<StringValue>([corner]) })
        {
            WorkbookViewId = 0,
            TabSelected = isFirst,
        };
    }

    /// <summary>As wide as what they hold; where the printed ones are wider than paper together, the widest give way, so that their texts wrap, but no word is broken and no heading cut.</summary>
    private static double[] Widths(Table table)
    {
        double[] widths = [.. table.Columns.Select((_, i) => Width(table, i))];
        double[] roomy = [.. widths.Select((w, i) => Math.Min(w, Least(table, i, Arrow)))], bare = [.. widths.Select((w, i) => Math.Min(w, Least(table, i, 0)))];
        var printed = table.Columns.Count - table.Aside;
        foreach (var least in new[] { roomy, bare })
        {
            while (widths.Take(printed).Sum() > Across && Enumerable.Range(0, printed).Where(c => widths[c] > least[c]).ToList() is { Count: > 0 } broad)
            {
                var widest = broad.MaxBy(c => widths[c]);
                widths[widest] = Math.Max(least[widest], widths[widest] - 1);
            }
        }

        return widths;
    }

    private static double Width(Table table, int column)
    {
        if (column >= table.Columns.Count - table.Aside)
        {
            return Aside;
        }

        var texts = table.Rows.Select(r => Page.LengthOf(Shown(r[column]))).DefaultIfEmpty(0).Max();
        return Math.Max(Heading(table, column) + Arrow, Math.Clamp(texts, Narrowest, table.IsForbidden && column == 0 ? Narrow : Widest)) + Rim;
    }

    /// <summary>What the longest word of a column needs, at most the most that a column gets.</summary>
    private static double Least(Table table, int column, int arrow)
    {
        var words = table.Rows.SelectMany(r => Shown(r[column]).Split(' ')).Select(Page.LengthOf).DefaultIfEmpty(0).Max();
        return Math.Max(Heading(table, column) + arrow, Math.Clamp(words, Narrowest, Widest)) + Rim;
    }

    private static int Heading(Table table, int column) => table.Columns[column].Split(' ').Max(Page.LengthOf);

    private static Row Row(Table table, int row, IReadOnlyList<Cell> cells) =>
        new(cells.Select((c, i) => c == Cell.Empty ? null : CellOf(c, Address(i, row), Look(table, row, i))).OfType<DocumentFormat.OpenXml.Spreadsheet.Cell>()) { RowIndex = (uint)row + 1 };

    private static uint Look(Table table, int row, int column) =>
        row == 0 ? SheetStyles.Heading : table.IsForbidden && column == 0 ? SheetStyles.Warning : column >= table.Columns.Count - table.Aside ? SheetStyles.OneLine : SheetStyles.Wrapped;

    private static DocumentFormat.OpenXml.Spreadsheet.Cell CellOf(Cell cell, string address, uint look) => cell.Value is { } number
        ? new(new CellValue(number)) { CellReference = address, StyleIndex = SheetStyles.Number(cell.Decimals) }
        : new(new InlineString(new DocumentFormat.OpenXml.Spreadsheet.Text(Workbook.Printable(cell.Text)) { Space = SpaceProcessingModeValues.Preserve })) { CellReference = address, DataType = CellValues.InlineString, StyleIndex = look };

    private static string Shown(Cell cell) => cell.Value is { } number ? number.ToString("F" + cell.Decimals, CultureInfo.InvariantCulture) : cell.Text;

    private static HeaderFooter Edges(PaperHead head)
    {
        var whole = Page.Wrap($"{head.Identity}. {head.Title}", MostInAFoot)[0];
        var kept = (whole.Length > 2 * MostInAFoot ? head.Identity : whole).Replace("&", "&&", StringComparison.Ordinal);
        var foot = new OddFooter(Workbook.Printable($"&L{kept}&Rpage &P of &N"));
        return head.Warning is null ? new HeaderFooter(foot) : new HeaderFooter(new OddHeader($"&C{PaperHead.Sign} {PaperHead.Forbidden.ToUpperInvariant()}"), foot);
    }

    private static string Address(int column, int row) => Letters(column) + (row + 1).ToString(CultureInfo.InvariantCulture);

    private static string Fixed(int column, int row) => $"${Letters(column)}${(row + 1).ToString(CultureInfo.InvariantCulture)}";

    private static string Letters(int column) => column < 26 ? ((char)('A' + column)).ToString() : Letters((column / 26) - 1) + (char)('A' + (column % 26));
}

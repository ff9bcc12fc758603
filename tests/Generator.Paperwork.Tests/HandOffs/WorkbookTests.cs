using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;
using DocumentFormat.OpenXml.Validation;
using Generator.Paperwork.HandOffs;
using Generator.Paperwork.Teaching;
using Generator.Testing;

namespace Generator.Paperwork.Tests.HandOffs;

/// <summary>The workbook, held against the schema of its format and read by MiniExcel.</summary>
public class WorkbookTests
{
    private static readonly Paperwork.HandOffs.Table Moves = MoveTable.Of(Ferry.Scene, Ferry.Routine, Ferry.Steps, PhraseCut.Of(Ferry.Steps));

    private static readonly Paperwork.HandOffs.Table Tracks = TrackTable.Of(Ferry.Scene, Ferry.Routine, Ferry.Steps);

    [Fact]
    public void The_workbook_is_valid_and_holds_every_cell()
    {
        var bytes = Paperwork.HandOffs.Workbook.Of(Ferry.Source.Head, Moves, Tracks);
        using var document = Open(bytes);
        Assert.Empty(new OpenXmlValidator(FileFormatVersions.Office2019).Validate(document));
        Assert.Equal(["Moves", "Tracks"], document.WorkbookPart!.Workbook!.Descendants<Sheet>().Select(s => s.Name!.Value));
        foreach (var table in new[] { Moves, Tracks })
        {
            var rows = SheetReading.Of(bytes, table.Name);
            Assert.Equal(table.Columns, rows[0]);
            Assert.Equal(table.Rows.Select(r => r.Select(Text)), rows.Skip(1));
        }
    }

    [Fact]
    public void Hostile_text_stays_text_and_numbers_are_numbers()
    {
        string[] hostile = [.. TableTests.Hostile, "bell\u0007", "<x>&amp;"];
        var bytes = Paperwork.HandOffs.Workbook.Of(Ferry.Source.Head, new Paperwork.HandOffs.Table("T", ["x", "n"], [.. hostile.Select(h => (IReadOnlyList<Paperwork.HandOffs.Cell>)[Paperwork.HandOffs.Cell.Of(h), Paperwork.HandOffs.Cell.Number(-2.5m)])]));
        using var document = Open(bytes);
        Assert.Empty(new OpenXmlValidator(FileFormatVersions.Office2019).Validate(document));
        var sheet = document.WorkbookPart!.WorksheetParts.Single().Worksheet!;
        Assert.Empty(sheet.Descendants<CellFormula>());
        var cells = sheet.Descendants<DocumentFormat.OpenXml.Spreadsheet.Row>().Skip(1).Select(r => r.Elements<DocumentFormat.OpenXml.Spreadsheet.Cell>().ToList()).ToList();
        Assert.All(cells, c => Assert.True(c[0].DataType!.Value == CellValues.String || c[0].DataType!.Value == CellValues.SharedString || c[0].DataType!.Value == CellValues.InlineString));
        Assert.All(cells, c => Assert.True(c[1].DataType is null || c[1].DataType!.Value == CellValues.Number));
        var back = SheetReading.Of(bytes, "T").Skip(1).Select(r => r[0]).ToList();
        Assert.Equal(hostile.Select(Plain), back.Select(Plain));
    }

    /// <summary>A count that is whole can be sorted and reckoned with; only "4&amp;" is none.</summary>
    [Fact]
    public void Whole_counts_of_the_routine_are_numbers()
    {
        var table = RoutineSheet.Of(Ferry.Routine, Ferry.Source.Head);
        foreach (var name in new[] { "count", "entrance" })
        {
            var cells = table.Rows.Select(r => r[table.Columns.ToList().IndexOf(name)]).Where(c => c != Paperwork.HandOffs.Cell.Empty).ToList();
            Assert.Contains(cells, c => c.Value is not null);
            Assert.All(cells.Where(c => c.Value is null), c => Assert.EndsWith("&", c.Text, StringComparison.Ordinal));
        }
    }

    /// <summary>One page wide, at 70 % or more: 10 inches of Letter across, a letter being 7 of 96 pixels an inch wide.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Sheets_print_large_enough_to_be_read(bool everything)
    {
        var table = everything ? Moves with { Columns = [.. Moves.Columns, "to mark", "way m", "by"], Rows = [.. Moves.Rows.Select(r => (IReadOnlyList<Paperwork.HandOffs.Cell>)[.. r, Paperwork.HandOffs.Cell.Of("cold-store door"), Paperwork.HandOffs.Cell.Number(1.25m, 2), Paperwork.HandOffs.Cell.Of("Wanda-Marie von der Hohenwarte")])] } : Moves;
        using var document = Open(Paperwork.HandOffs.Workbook.Of(Ferry.Source.Head, table.Under(Ferry.Source.Head), Tracks));
        foreach (var part in document.WorkbookPart!.WorksheetParts)
        {
            var widths = part.Worksheet!.Descendants<Column>().Select(c => c.Width!.Value).ToList();
            var aside = widths.Count > 15 ? 3 : 0;
            Assert.InRange(widths.SkipLast(aside).Sum(), 50, 10 * 96 / 7.0 / 0.7);
        }
    }

    [Fact]
    public void The_same_tables_give_the_same_bytes() => Assert.Equal(Paperwork.HandOffs.Workbook.Of(Ferry.Source.Head, Moves, Tracks), Paperwork.HandOffs.Workbook.Of(Ferry.Source.Head, Moves, Tracks));

    [Fact]
    public void Tables_without_rows_make_a_valid_workbook()
    {
        using var document = Open(Paperwork.HandOffs.Workbook.Of(Ferry.Source.Head, Moves with { Rows = [] }));
        Assert.Empty(new OpenXmlValidator(FileFormatVersions.Office2019).Validate(document));
    }

    private static string Plain(string text) => text.Replace("\u0007", string.Empty, StringComparison.Ordinal).ReplaceLineEndings("\n");

    private static string Text(Paperwork.HandOffs.Cell cell) => cell.Value is { } number ? number.ToString("0.###", System.Globalization.CultureInfo.InvariantCulture) : cell.Text;

    private static SpreadsheetDocument Open(byte[] bytes) => SpreadsheetDocument.Open(new MemoryStream(bytes), isEditable: false);
}

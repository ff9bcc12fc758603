using Generator.Domain;
using Generator.Library;
using Generator.Library.Files;
using Generator.Library.Loading;
using Generator.Library.Reading;
using Generator.Paperwork;
using Generator.Paperwork.HandOffs;
using Generator.Rules;
using Generator.Rules.Judging;
using Newtonsoft.Json.Linq;

namespace Generator.Outside.Tests;

/// <summary>The workbook read by another program: the openpyxl package of Python, which had no part in writing it.</summary>
public class WorkbookReadBackTests
{
    private const string Script = """
        import json, openpyxl, sys
        book = openpyxl.load_workbook(open(sys.argv[1], 'rb'))
        print(json.dumps([{
            'name': s.title, 'frozen': s.freeze_panes, 'filter': s.auto_filter.ref, 'all': s.dimensions, 'area': s.print_area, 'heading': s.print_title_rows,
            'fits': s.sheet_properties.pageSetUpPr.fitToPage, 'across': s.page_setup.fitToWidth, 'down': s.page_setup.fitToHeight, 'orientation': s.page_setup.orientation, 'foot': s.oddFooter.right.text, 'head': s.oddHeader.center.text,
            'widths': [s.column_dimensions[c[0].column_letter].width for c in s.columns], 'wraps': [all(t.alignment.wrap_text for t in c[1:] if isinstance(t.value, str)) for c in s.columns],
            'formats': [sorted({x.number_format for x in c[1:] if isinstance(x.value, (int, float))}) for c in s.columns],
            'rows': [list(r) for r in s.iter_rows(values_only=True)]} for s in book]))
        """;

    private static readonly string[] Numbers = ["move", "phrase", "count", "to count", "second", "to second", "distance m", "linger"];

    private static readonly JArray Sheets = JArray.Parse(Python.Reads("openpyxl", Script, Written()));

    [PythonFact("openpyxl", DisplayName = "XLSX: Python's openpyxl reads a frozen heading with a filter over everything, and one page across")]
    public void Another_program_reads_the_layout()
    {
        Assert.Equal(["Moves", "Tracks", "Routine"], Sheets.Select(s => (string?)s["name"]));
        foreach (var sheet in Sheets)
        {
            Assert.Equal("C2", (string?)sheet["frozen"]);
            Assert.Equal((string?)sheet["all"], (string?)sheet["filter"]);
            Assert.Equal("$1:$1", (string?)sheet["heading"]);
            Assert.Equal((true, 1, 0, "landscape"), ((bool)sheet["fits"]!, (int)sheet["across"]!, (int)sheet["down"]!, (string)sheet["orientation"]!));
            Assert.Equal(("page &P of &N", "▲! NOT TO BE PERFORMED LIKE THIS"), ((string?)sheet["foot"], (string?)sheet["head"]));
        }
    }

    [PythonFact("openpyxl", DisplayName = "XLSX: Python's openpyxl reads columns in which every word has room, and letters of no less than 6.5 points when it is printed on A4")]
    public void Another_program_reads_the_widths()
    {
        foreach (var sheet in Sheets)
        {
            var rows = sheet["rows"]!.Select(r => r.ToList()).ToList();
            var widths = sheet["widths"]!.Select(w => (double)w).ToList();
            var printed = rows[0].FindIndex(c => (string?)c == "routine") is > 0 and var aside ? aside : rows[0].Count;
            for (var column = 0; column < printed; column++)
            {
                var words = rows.SelectMany(r => ((string?)r[column] ?? string.Empty).Split(' ')).Max(w => w.Length);
                Assert.True(widths[column] >= words, $"{sheet["name"]}, {rows[0][column]}: {widths[column]} for {words} letters");
                var longest = rows.Skip(1).Max(r => ((string?)r[column] ?? string.Empty).Length);
                Assert.True(widths[column] >= longest || (bool?)sheet["wraps"]![column] == true, $"{sheet["name"]}, {rows[0][column]}: {widths[column]} for {longest} letters on one line");
            }

            // A letter of 11 points is 5.25 points wide, and a page across has 770 points between its margins.
            Assert.InRange(11 * 770 / (5.25 * widths.Take(printed).Sum()), 6.5, 30);
        }
    }

    [PythonFact("openpyxl", DisplayName = "XLSX: Python's openpyxl reads counts, seconds and metres as numbers that sort, with as many digits down a column")]
    public void Another_program_reads_numbers()
    {
        var sheet = Sheets.First();
        var rows = sheet["rows"]!.Select(r => r.ToList()).ToList();
        var seen = 0;
        foreach (var column in Numbers.Select(n => rows[0].FindIndex(c => (string?)c == n)))
        {
            Assert.True(column > 0);
            var cells = rows.Skip(1).Select(r => r[column]).Where(c => c.Type != JTokenType.Null).ToList();
            Assert.All(cells, c => Assert.True(c.Type is JTokenType.Integer or JTokenType.Float, $"{rows[0][column]}: {c}"));
            Assert.Single(sheet["formats"]![column]!);
            seen += cells.Count;
        }

        Assert.True(seen > 60, $"{seen} numbers");
        var (called, count) = (rows[0].FindIndex(c => (string?)c == "called"), rows[0].FindIndex(c => (string?)c == "count"));
        Assert.Contains(rows.Skip(1), r => ((string)r[called]!).EndsWith('&'));
        Assert.All(rows.Skip(1), r => Assert.Equal((string?)r[called], new HalfCounts((int)(((double)r[count]! - 1) * 2)).ToCountText()));
    }

    private static byte[] Written()
    {
        var book = LibraryLoader.LoadBundled([]).Value!;
        var file = Path.Combine(AppContext.BaseDirectory, "Data", "ferry.routine.json");
        var routine = RoutineReader.Parse(new SourceFile(file, File.ReadAllText(file)), book).Value!;
        var source = PaperSource.Of(new Scene(routine.Brief, book), routine);
        var head = source.Head with { Warning = PaperHead.Forbidden };
        return Workbook.Of(
            head,
            MoveTable.Of(source.Scene, routine, source.Steps, source.Phrases).Under(head).WithCaution(),
            TrackTable.Of(source.Scene, routine, source.Steps).Under(head).WithCaution(),
            RoutineSheet.Of(routine, head));
    }
}

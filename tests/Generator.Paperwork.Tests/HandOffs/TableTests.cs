using System.Text;
using CsvHelper;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Generator.Paperwork.HandOffs;
using Generator.Paperwork.Teaching;

namespace Generator.Paperwork.Tests.HandOffs;

public class TableTests
{
    private static readonly IReadOnlyList<Phrase> Phrases = PhraseCut.Of(Ferry.Steps);

    private static readonly Table Moves = MoveTable.Of(Ferry.Scene, Ferry.Routine, Ferry.Steps, Phrases);

    private static readonly Table Tracks = TrackTable.Of(Ferry.Scene, Ferry.Routine, Ferry.Steps);

    /// <summary>Texts that spreadsheets would run, and texts that try the form of the file.</summary>
    public static readonly string[] Hostile =
        ["=1+1", "=cmd|' /C calc'!A0", "+1", "-1+2", "@SUM(A1)", "\t=1", "\r=1", "  =1", "＝1", "b\"b", "a,b", "two\nlines", "lone\rreturn", "end\r\n", " kept ", "'already", "œuvre 小"];

    [Theory]
    [InlineData("b\"b", "\"b\"\"b\"")]
    [InlineData("a,b", "\"a,b\"")]
    [InlineData("lone\rreturn", "\"lone\rreturn\"")]
    [InlineData("plain", "plain")]
    [InlineData("=1+1", "'=1+1")]
    public void Csv_after_rfc_4180(string text, string cell) => Assert.Equal($"x\r\n{cell}\r\n", new Table("T", ["x"], [[Cell.Of(text)]]).ToCsv());

    [Fact]
    public void No_text_cell_can_be_run_as_a_formula_and_all_else_comes_back()
    {
        var back = Read(new Table("T", ["x", "n"], [.. Hostile.Select(h => (IReadOnlyList<Cell>)[Cell.Of(h), Cell.Number(-2.5m)])]).ToCsv()).Skip(1).ToList();
        Assert.Equal(Hostile.Length, back.Count);
        foreach (var (text, row) in Hostile.Zip(back))
        {
            Assert.Equal("-2.5", row[1]);
            Assert.DoesNotContain(row[0].TrimStart(' ')[0], "=+-@\t\r＝");
            Assert.Equal(text, row[0] == text ? row[0] : row[0][1..]);
        }
    }

    [Property]
    public Property Any_text_comes_back_but_for_the_apostrophe() => Prop.ForAll(
        Arb.From(Gen.ArrayOf(Gen.Elements("a", "\"", ",", "\r", "\n", "=", "-", " ", ";", "é"), 6).Select(string.Concat)),
        text =>
        {
            var back = Read(new Table("T", ["first", "x"], [[Cell.Of("1"), Cell.Of(text)]]).ToCsv())[1][1];
            return (back == text || back == "'" + text).Classify(back != text, "made harmless");
        });

    [Fact]
    public void Every_move_stands_in_the_csv()
    {
        var rows = Read(Moves.ToCsv());
        Assert.Equal(Ferry.Steps.Count + 1, rows.Count);
        Assert.All(rows, r => Assert.Equal(Moves.Columns.Count, r.Count));
        var (technique, seconds) = (Column(Moves, "technique"), Column(Moves, "second"));
        Assert.Equal(Ferry.Steps.Select(s => s.Technique!.Name), rows.Skip(1).Select(r => r[technique]));
        Assert.Equal("2.4", rows[1][seconds]);
        Assert.Equal(Phrases.Select(p => p.Number), rows.Skip(1).Select(r => int.Parse(r[Column(Moves, "phrase")], System.Globalization.CultureInfo.InvariantCulture)).Distinct());
        Assert.Equal(rows.Skip(1).OrderBy(r => decimal.Parse(r[Column(Moves, "count")], System.Globalization.CultureInfo.InvariantCulture)), rows.Skip(1));
    }

    [Fact]
    public void Everybody_has_a_track_in_order_of_time()
    {
        var rows = Read(Tracks.ToCsv()).Skip(1).ToList();
        Assert.Equal(["Ines", "Bruno", "Wanda", "Piet"], rows.Select(r => r[0]).Distinct());
        var times = rows.GroupBy(r => r[0], r => decimal.Parse(r[Column(Tracks, "second")], System.Globalization.CultureInfo.InvariantCulture));
        Assert.All(times, t => Assert.Equal(t.Order(), t));
        Assert.Equal(Ferry.Steps.Count, rows.Count(r => r[0] == "Ines"));
        Assert.All(Ferry.Steps.Where(s => s.Attack is not null), s => Assert.Contains(rows, r => r[Column(Tracks, "does")] == s.Attack!.Name && r[^1] == (s.Index + 1).ToString(System.Globalization.CultureInfo.InvariantCulture)));
    }

    [Fact]
    public void The_same_tables_give_the_same_bytes() => Assert.Equal(MoveTable.Of(Ferry.Scene, Ferry.Routine, Ferry.Steps, Phrases).ToCsv(), Moves.ToCsv());

    private static int Column(Table table, string name) => table.Columns.ToList().IndexOf(name);

    /// <summary>Read by CsvHelper, which knows nothing of the writer.</summary>
    private static List<List<string>> Read(string csv)
    {
        using var stream = new MemoryStream(Encoding.UTF8.GetBytes(csv));
        using var reader = CsvReader.Create(stream, new CsvReaderOptions { HasHeader = false });
        var rows = new List<List<string>>();
        while (reader.Read())
        {
            rows.Add([.. Enumerable.Range(0, reader.FieldCount).Select(reader.GetString)]);
        }

        return rows;
    }
}

using System.Text;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Generator.Library.Files;
using Generator.Library.Reading;

namespace Generator.Library.Tests.Files;

public class CsvTextTests
{
    private readonly ProblemList problems = new();

    [Theory]
    [InlineData("a,b\r\nc,d", "1:a|b 2:c|d")]
    [InlineData("a,b\nc,\n", "1:a|b 2:c|")]
    [InlineData("a;b\rc;d,e\r", "1:a|b 2:c|d,e")]
    [InlineData("a\tb\nc\td;e", "1:a|b 2:c|d;e")]
    [InlineData("\uFEFFa,b\n\n,\n\"c\n,\"\"d\"\"\",e\nf,g", "1:a|b 4:c\n,\"d\"|e 6:f|g")]
    [InlineData("\"a\" ,\"\"", "1:a|")]
    public void Cells_are_told_apart_and_rows_know_their_line(string text, string expected)
    {
        var rows = CsvText.Parse("x.csv", text, problems);
        Assert.Equal(expected, string.Join(' ', rows.Select(r => $"{r.Line}:{string.Join('|', r.Cells)}")));
        Assert.True(problems.IsEmpty);
    }

    [Property(MaxTest = 500)]
    public Property Whatever_stands_in_the_cells_comes_back(NonNull<string>[] some)
    {
        List<string> cells = ["start", .. some.Select(s => s.Get)];
        var text = new StringBuilder("header,second\r\n");
        CsvText.Append(text, cells);
        CsvText.Append(text, cells);
        var rows = CsvText.Parse("x.csv", text.ToString(), problems);
        return (problems.IsEmpty && rows.Count == 3 && rows[1].Cells.SequenceEqual(cells, StringComparer.Ordinal) && rows[2].Cells.SequenceEqual(cells, StringComparer.Ordinal))
            .Classify(cells.Any(c => c.AsSpan().IndexOfAny(",\"\r\n") >= 0), "needs quotation marks");
    }
}

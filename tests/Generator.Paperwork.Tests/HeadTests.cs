using System.Globalization;
using System.IO.Compression;
using System.Net;
using System.Text;
using Generator.Domain;
using Generator.Paperwork.Text;
using Generator.Rules;
using Generator.Rules.Sight;
using Generator.Testing;

namespace Generator.Paperwork.Tests;

/// <summary>Every paper says what it is a paper of, and every printed page which one it is.</summary>
public class HeadTests
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Every_paper_says_title_version_library_and_date(bool dated)
    {
        var source = Of(Ferry.Routine, dated);
        var papers = Pack.Of(source);
        Assert.Equal(dated, papers.Any(p => p.FileName == "rehearsals.ics"));
        Assert.InRange(papers.Count, 20, 100);
        foreach (var paper in papers)
        {
            var text = Flat(TextOf(paper, source));
            Assert.All([source.Brief.Title, source.Head.Version, source.Head.Library], s => Assert.True(text.Contains(s, StringComparison.Ordinal), $"{paper.FileName} lacks {s}"));
            Assert.True(dated == text.Contains("2027-03-15", StringComparison.Ordinal), paper.FileName);
        }
    }

    [Fact]
    public void Every_paper_that_is_printed_numbers_its_pages()
    {
        var source = Of(Ferry.Routine, true);
        var counted = 0;
        foreach (var paper in Pack.Of(source))
        {
            var text = TextOf(paper, source);
            switch (Path.GetExtension(paper.FileName))
            {
                case ".txt":
                    Paged(text, source.Head);
                    counted++;
                    break;
                case ".html":
                    Assert.Contains("\"page \" counter(page) \" of \" counter(pages)", text, StringComparison.Ordinal);
                    counted++;
                    break;
                case ".xlsx":
                    Assert.Equal(3, text.Split("&amp;Rpage &amp;P of &amp;N").Length - 1);
                    counted++;
                    break;
            }
        }

        Assert.InRange(counted, 16, 100);
    }

    /// <summary>Pages of random routines fit a sheet, lose no line and break at empty lines where there are any.</summary>
    [Fact]
    public void Text_is_cut_into_pages_and_nothing_is_lost()
    {
        var (pages, sheets) = (0, 0);
        foreach (var seed in Enumerable.Range(1, 12))
        {
            var source = Of(RandomRoutine.Of(seed, Ferry.Book), true);
            foreach (var paper in Pack.Of(source).OfType<SheetPaper>())
            {
                var cut = Paged(TextOf(paper, source), source.Head);
                Assert.Equal(paper.Whole(source).TrimEnd('\n'), string.Join('\n', cut).TrimEnd('\n'));
                Assert.All(cut.Take(cut.Count - 1), p => Assert.True(p.EndsWith('\n') || !p.Split('\n').TakeLast(14).Contains(string.Empty), p));
                (pages, sheets) = (pages + cut.Count, sheets + 1);
            }
        }

        Assert.InRange(pages, sheets * 3 / 2, sheets * 20);
    }

    /// <summary>The pages without their feet.</summary>
    private static List<string> Paged(string text, PaperHead head)
    {
        var pages = text.Split('\f');
        Assert.All(pages, p => Assert.InRange(p.Split('\n').Length - 1, 2, SheetPaper.LinesOfAPage));
        return [.. pages.Select((page, i) =>
        {
            var number = string.Create(CultureInfo.InvariantCulture, $"page {i + 1} of {pages.Length}");
            var foot = page[(page.LastIndexOf("\n\n", StringComparison.Ordinal) + 2)..];
            Assert.Equal($"{(head.Warning is null ? string.Empty : "!! NOT TO BE PERFORMED LIKE THIS ")}{head.Title}. {head.Identity}; {number}", Flat(foot));
            Assert.EndsWith(number + "\n", foot, StringComparison.Ordinal);
            Assert.All(foot.Split('\n'), l => Assert.InRange(Page.LengthOf(l), 0, Page.Width));
            return page[..^(foot.Length + 2)];
        })];
    }

    private static PaperSource Of(Routine routine, bool dated)
    {
        var source = PaperSource.Of(new Scene(routine.Brief, Ferry.Book), routine);
        return source.With(PaperOptions.Default with { From = dated ? new DateOnly(2027, 3, 15) : null, Cameras = new CameraPlan(Hit.Of(source.Scene, source.Steps), source.Brief.Cameras, []) });
    }

    private static string Flat(string text) => string.Join(' ', text.Split([' ', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries));

    /// <summary>The words of a paper; of a workbook those of all its parts, of a calendar with its folded lines joined.</summary>
    private static string TextOf(IPaper paper, PaperSource source)
    {
        using var stream = new MemoryStream();
        paper.Write(source, stream);
        if (!paper.FileName.EndsWith(".xlsx", StringComparison.Ordinal))
        {
            var text = Encoding.UTF8.GetString(stream.ToArray()).Replace("\r\n ", string.Empty, StringComparison.Ordinal);
            return Path.GetExtension(paper.FileName) switch
            {
                ".html" or ".svg" => WebUtility.HtmlDecode(text),
                ".ics" => text.Replace("\\,", ",", StringComparison.Ordinal).Replace("\\;", ";", StringComparison.Ordinal),
                _ => text,
            };
        }

        stream.Position = 0;
        using var zip = new ZipArchive(stream);
        return string.Join(' ', zip.Entries.Select(e => new StreamReader(e.Open()).ReadToEnd()));
    }
}

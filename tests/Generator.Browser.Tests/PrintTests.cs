using Generator.Domain;
using Generator.Paperwork;
using Generator.Paperwork.Printing;
using Generator.Paperwork.Text;
using Generator.Rules;
using Microsoft.Playwright;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using PageSize = Generator.Paperwork.Printing.PageSize;

namespace Generator.Browser.Tests;

/// <summary>What is printed, read back with PdfPig, which had no part in making it.</summary>
public sealed class PrintTests(Browser browser, Papers papers) : IClassFixture<Browser>, IClassFixture<Papers>
{
    /// <summary>12 mm in points, less a point of rounding.</summary>
    private const double Margin = 33;

    /// <summary>Points from the upper and lower edge within which printers do not print: 5 mm. Common practice, no source.</summary>
    private const double Printable = 14;

    [Theory]
    [InlineData("routine.html", "A4", 595, 842, 5, 7)]
    [InlineData("routine.html", "Letter", 612, 792, 5, 7)]
    [InlineData("part-bruno.html", "A4", 595, 842, 1, 3)]
    [InlineData("part-zora.html", "Letter", 612, 792, 1, 4)]
    [InlineData("risk-assessment.html", "Letter", 612, 792, 4, 9)]
    public async Task Pages_print_on_both_papers_with_nothing_cut_off(string file, string paper, int width, int height, int fewest, int most)
    {
        await using var sheet = await browser.Open(papers.Of(file), new() { ColorScheme = ColorScheme.Dark });
        using var pdf = PdfDocument.Open(await sheet.Page.PdfAsync(new() { Format = paper, PreferCSSPageSize = true, PrintBackground = true }));
        Check(pdf, width, height, fewest, most);
        await sheet.Page.EmulateMediaAsync(new() { Media = Media.Print });
        Assert.Equal("rgb(255, 255, 255)", await sheet.Eval<string>("getComputedStyle(document.body).backgroundColor"));
        var words = Words(pdf);
        Assert.DoesNotContain("Follow", words, StringComparison.Ordinal);
        Assert.Contains("Bruno", words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_move_is_on_paper()
    {
        await using var sheet = await browser.Open(papers.Of("routine.html"));
        using var pdf = PdfDocument.Open(await sheet.Page.PdfAsync(new() { Format = "Letter", PrintBackground = true }));
        var words = Words(pdf);
        var steps = PaperSource.Of(new Scene(Papers.YardRoutine.Brief, Papers.Book), Papers.YardRoutine).Steps;
        foreach (var text in steps.SelectMany(s => new[] { s.Technique!.Name, s.Reaction!.Name }).Concat(["Tracks", "Phrase 2", "Seen and agreed", "Zora", "Findings of the audit"]))
        {
            Assert.Contains(text.Replace(" ", string.Empty, StringComparison.Ordinal), words.Replace(" ", string.Empty, StringComparison.Ordinal), StringComparison.Ordinal);
        }
    }

    /// <summary>A picture that hangs into the next move is taken for that one.</summary>
    [Fact]
    public async Task A_printed_picture_stands_beside_its_own_move()
    {
        await using var sheet = await browser.Open(papers.Of("routine.html"));
        await sheet.Page.EmulateMediaAsync(new() { Media = Media.Print });
        Assert.True(await sheet.Eval<int>("document.querySelectorAll('.move > .figure').length") > 5);
        Assert.Equal(0, await sheet.Eval<int>("[...document.querySelectorAll('.move > .figure')].filter(f => f.getBoundingClientRect().bottom > f.parentElement.getBoundingClientRect().bottom + 1).length"));
    }

    /// <summary>The head of a phrase and its warning at the foot of a page say nothing without the floor below them.</summary>
    [Fact]
    public async Task The_head_of_a_phrase_stands_with_its_floor()
    {
        await using var sheet = await browser.Open(papers.Of("routine.html"));
        using var pdf = PdfDocument.Open(await sheet.Page.PdfAsync(new() { Format = "A4", PreferCSSPageSize = true, PrintBackground = true }));
        var heads = 0;
        foreach (var page in pdf.GetPages())
        {
            var words = page.GetWords().ToList();
            foreach (var head in words.Where(w => w.Text == "Phrase" && w.Letters[0].PointSize > 12))
            {
                Assert.Contains(words, w => w.Text == "12:00" && w.BoundingBox.Top < head.BoundingBox.Bottom);
                heads++;
            }
        }

        Assert.Equal(2, heads);
    }

    /// <summary>A page on which one line of a list is left is not worth turning to.</summary>
    [Fact]
    public async Task A_short_list_of_checks_is_not_cut_over_two_pages()
    {
        var path = Path.Combine(papers.Folder, "pack.html");
        await File.WriteAllTextAsync(path, PackPage.Of(PaperSource.Of(new Scene(Papers.YardRoutine.Brief, Papers.Book), Papers.YardRoutine)));
        await using var sheet = await browser.Open(path);
        await sheet.Page.EmulateMediaAsync(new() { Media = Media.Print });
        var lists = await sheet.Eval<string[]>("[...document.querySelectorAll('.checks')].map(l => (l.children.length > 5 ? 'long ' : 'short ') + getComputedStyle(l).breakInside)");
        Assert.Contains("short avoid", lists);
        Assert.DoesNotContain("short auto", lists);
    }

    [Theory]
    [InlineData("a4", 595, 842)]
    [InlineData("letter", 612, 792)]
    public void The_pack_is_one_document_on_the_paper_that_was_chosen(string word, int width, int height)
    {
        var routine = Papers.YardRoutine;
        var source = PaperSource.Of(new Scene(routine.Brief, Papers.Book), routine).With(PaperOptions.Default with { Page = PageSize.All.Single(p => p.Word == word) });
        var printer = Paperwork.Printing.Browser.Find(Environment.GetEnvironmentVariable("PATH"));
        Assert.NotNull(printer);
        using var pdf = PdfDocument.Open(printer.Print(PackPage.Of(source)));
        Check(pdf, width, height, 12, 22);
        Assert.Equal("Behind the cinema", pdf.Information.Title);
        var words = Words(pdf);
        foreach (var paper in new[] { "Risk assessment", "Teaching plan", "Fight call", "Cue list", "PHRASES", "STEP 5" })
        {
            Assert.Contains(paper.Replace(" ", string.Empty, StringComparison.Ordinal), words.Replace(" ", string.Empty, StringComparison.Ordinal), StringComparison.OrdinalIgnoreCase);
        }

        Assert.Contains(Cautions.Sheet.Replace(" ", string.Empty, StringComparison.Ordinal), words.Replace(" ", string.Empty, StringComparison.Ordinal), StringComparison.Ordinal);
    }

    /// <summary>8 mm in points, less a tenth of a millimetre of rounding.</summary>
    private const double High = 22.4;

    [Theory]
    [InlineData("wall-a3.pdf", 1191, 842, 1.0)]
    [InlineData("wall-a2.pdf", 1684, 1191, 1.41)]
    public void Counts_and_names_on_the_wall_have_capitals_of_8_millimetres_and_nothing_is_cut_off(string file, int width, int height, double larger)
    {
        var routine = Papers.Crowd;
        var source = PaperSource.Of(new Scene(routine.Brief, Papers.Book), routine);
        var printer = Paperwork.Printing.Browser.Find(Environment.GetEnvironmentVariable("PATH"));
        Assert.NotNull(printer);
        using var pdf = PdfDocument.Open(printer.Print(PosterPage.Of(source, PosterSize.Of(PageSize.A4).Single(s => s.FileName == file))));
        Check(pdf, width, height, 2, 6);
        var words = pdf.GetPages().SelectMany(p => p.GetWords()).ToList();
        var counts = words.Where(w => w.Text.Length > 1 && w.Text[0] == 'c' && char.IsDigit(w.Text[1]) && IsBold(w)).ToList();
        Assert.Equal(routine.Moves.Count, counts.Count);
        Assert.All(counts, w => Assert.True(w.Letters[1].BoundingBox.Height >= High * larger, $"{w.Text}: {w.Letters[1].BoundingBox.Height} points"));
        var names = words.Where(w => w.Text is "Bo" or "Jo" or "Wanda-Marie" && IsBold(w)).ToList();
        Assert.True(names.Count > routine.Moves.Count / 5, $"{names.Count} names");
        Assert.All(names, w => Assert.True(w.Letters[0].BoundingBox.Height >= High * larger, $"{w.Text}: {w.Letters[0].BoundingBox.Height} points"));
    }

    private static bool IsBold(Word word) => word.FontName?.Contains("Bold", StringComparison.OrdinalIgnoreCase) == true;

    private static void Check(PdfDocument pdf, int width, int height, int fewest, int most)
    {
        Assert.InRange(pdf.NumberOfPages, fewest, most);
        Assert.Empty(PrintedPages.Faults(pdf));
        foreach (var page in pdf.GetPages())
        {
            Assert.InRange(page.Width, width - 1.0, width + 1.0);
            Assert.InRange(page.Height, height - 1.0, height + 1.0);
            Assert.All(page.Letters.Where(l => l.Value.Trim().Length > 0), l => Assert.True(Holds(page, l), $"{l.Value} on page {page.Number} at {l.BoundingBox}"));
        }
    }

    private static bool Holds(UglyToad.PdfPig.Content.Page page, Letter letter) =>
        letter.BoundingBox.Left >= Margin && letter.BoundingBox.Right <= page.Width - Margin && letter.BoundingBox.Bottom >= Printable && letter.BoundingBox.Top <= page.Height - Printable;

    /// <summary>All words; two letters that are printed as one are two again.</summary>
    private static string Words(PdfDocument pdf) => string.Join(' ', pdf.GetPages().SelectMany(p => p.GetWords()).Select(w => w.Text)).Replace("ﬁ", "fi", StringComparison.Ordinal).Replace("ﬂ", "fl", StringComparison.Ordinal);
}

using System.Text;
using AngleSharp.Html.Parser;
using Generator.Paperwork.Printing;
using Generator.Paperwork.Text;

namespace Generator.Paperwork.Tests.Printing;

public class PrintingTests
{
    [Fact]
    public void Dates_in_a_pdf_are_fixed_and_nothing_moves()
    {
        var pdf = Encoding.ASCII.GetBytes("%PDF-1.4\n/CreationDate (D:20261125143802+00'00')\n/ModDate (D:20261125143803+00'00')>>\n/CreationDate (D:x)\n/ModDate (D:2");
        Assert.Equal(
            "%PDF-1.4\n/CreationDate (D:20000101000000+00'00')\n/ModDate (D:20000101000000+00'00')>>\n/CreationDate (D:x)\n/ModDate (D:2",
            Encoding.ASCII.GetString(PdfDates.Fixed(pdf)));
    }

    /// <summary>Every word of every paper that is read, save the wall sheet and the typed risk assessment, whose pages say the same in their own order.</summary>
    [Fact]
    public void The_page_to_print_holds_the_routine_and_every_word_of_the_other_papers()
    {
        var page = PackPage.Of(Ferry.Source);
        var body = new HtmlParser().ParseDocument(page).Body!;
        var words = body.QuerySelectorAll(".paper").Select(p => new HashSet<string>(p.QuerySelectorAll("h1, h2, p, th, td, li").SelectMany(e => e.TextContent.Split([' ', '\n', ':', ','], StringSplitOptions.RemoveEmptyEntries)), StringComparer.OrdinalIgnoreCase)).ToList();
        var compared = 0;
        foreach (var paper in Pack.Of(Ferry.Source).OfType<SheetPaper>().Where(p => p.Blocks(Ferry.Source)[0].Kind == BlockKind.Title))
        {
            var text = paper.Blocks(Ferry.Source).SelectMany(b => b.Lines).SelectMany(l => l.Split([' ', ':', ','], StringSplitOptions.RemoveEmptyEntries)).Where(w => w.Any(char.IsLetterOrDigit) && w is not ("[x]" or "signed")).Distinct().ToList();
            Assert.True(words.Exists(w => text.TrueForAll(w.Contains)), $"{paper.FileName}: {string.Join(' ', text.Where(t => !words.Exists(w => w.Contains(t))))}");
            compared++;
        }

        Assert.InRange(compared, 4, 100);
        Assert.Contains("id=\"tracks\"", page, StringComparison.Ordinal);
        Assert.Contains("<h1>Risk assessment</h1>", page, StringComparison.Ordinal);
        Assert.Contains("script-src 'none'", page, StringComparison.Ordinal);
        Assert.Equal(body.QuerySelectorAll("[id]").Select(e => e.Id).Distinct().Count(), body.QuerySelectorAll("[id]").Length);
    }

    [Fact]
    public void A_browser_is_looked_for_on_the_search_path()
    {
        var folder = Directory.CreateTempSubdirectory("generator-path-").FullName;
        try
        {
            Assert.Null(Browser.Find(null));
            Assert.Null(Browser.Find(folder));
            File.WriteAllText(Path.Combine(folder, OperatingSystem.IsWindows() ? "chromium.exe" : "chromium"), string.Empty);
            var browser = Browser.Find($"/nowhere{Path.PathSeparator}{folder}");
            Assert.NotNull(browser);
            Assert.Throws<PrintException>(() => browser.Print("<p>x</p>"));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>Where there is a browser it prints; where there is none the search says so.</summary>
    [Fact]
    public void A_page_becomes_a_pdf_that_is_the_same_twice()
    {
        if (Browser.Find(Environment.GetEnvironmentVariable("PATH")) is not { } browser)
        {
            Assert.DoesNotContain((Environment.GetEnvironmentVariable("PATH") ?? string.Empty).Split(Path.PathSeparator), f => File.Exists(Path.Combine(f, "chromium")));
            return;
        }

        const string Page = "<!DOCTYPE html><html lang=\"en\"><title>x</title><body><h1>Night ferry</h1><p>One page.</p></body></html>";
        var first = browser.Print(Page);
        Assert.Equal("%PDF-1.", Encoding.ASCII.GetString(first, 0, 7));
        Assert.Contains("%%EOF", Encoding.ASCII.GetString(first, first.Length - 10, 10), StringComparison.Ordinal);
        Assert.Equal(first, browser.Print(Page));
    }
}

using System.Text;
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

    [Fact]
    public void The_page_to_print_holds_the_routine_and_every_text_paper_as_it_is()
    {
        var page = PackPage.Of(Ferry.Source);
        var plain = System.Net.WebUtility.HtmlDecode(page);
        Assert.All(Pack.Of(Ferry.Source).OfType<SheetPaper>(), p => Assert.Contains(p.Whole(Ferry.Source).Trim(), plain, StringComparison.Ordinal));

        Assert.Contains("id=\"tracks\"", page, StringComparison.Ordinal);
        Assert.Contains("script-src 'none'", page, StringComparison.Ordinal);
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

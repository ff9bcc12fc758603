using System.Diagnostics;
using System.Text.RegularExpressions;
using Generator.Figures.Painting;

namespace Generator.Browser.Tests;

/// <summary>Every kind of page that the program writes can be used by everybody, light and dark, on a phone and on a desk.</summary>
public sealed partial class AxeTests(Browser browser, Papers papers) : IClassFixture<Browser>, IClassFixture<Papers>
{
    /// <summary>Pictures in each part of the sheet of all: they differ in what is drawn only.</summary>
    private const int Pictures = 3;

    [Theory]
    [InlineData("routine.html")]
    [InlineData("part-bruno.html")]
    [InlineData("part-zora.html")]
    [InlineData("risk-assessment.html")]
    [InlineData("camera-plan.html")]
    [InlineData("wall.html")]
    public Task Of_the_papers(string file) => IsClean(papers.Of(file));

    [Fact]
    public async Task Of_the_guide()
    {
        var file = Path.Combine(papers.Folder, "guide.html");
        using var program = Process.Start(new ProcessStartInfo("dotnet", [Own.Built, "guide", "--out", file]) { UseShellExecute = false, RedirectStandardError = true })!;
        await program.WaitForExitAsync();
        Assert.True(File.Exists(file), await program.StandardError.ReadToEndAsync());
        await IsClean(file);
    }

    [Fact]
    public async Task Of_the_pictures_of_the_library()
    {
        var file = Path.Combine(papers.Folder, "pictures.html");
        var parts = ContactSheet.Html(Papers.Cards, Papers.Book).Split("<h2>");
        var few = string.Join("<h2>", parts.Select(p => string.Concat(Beginning().Match(p).Value, string.Concat(Figure().Matches(p).Take(Pictures)), Ending().Match(p).Value)));
        Assert.True(Figure().Count(few) > 10 * Pictures, few);
        await File.WriteAllTextAsync(file, few);
        await IsClean(file);
    }

    private async Task IsClean(string file)
    {
        await using var sheet = await browser.Open(file, new() { BypassCSP = true });
        await sheet.Eval<bool>("(document.querySelectorAll('details').forEach(d => d.open = true), true)");
        await Axe.IsCleanEverywhere(sheet);
    }

    [GeneratedRegex("<figure>.*?</figure>", RegexOptions.Singleline | RegexOptions.CultureInvariant)]
    private static partial Regex Figure();

    [GeneratedRegex("^.*?(?=<figure>|$)", RegexOptions.Singleline | RegexOptions.CultureInvariant)]
    private static partial Regex Beginning();

    [GeneratedRegex("(?<=</figure>)(?!.*<figure>).*$", RegexOptions.Singleline | RegexOptions.CultureInvariant)]
    private static partial Regex Ending();
}

using System.Globalization;
using System.Text;
using Generator.Domain;
using Generator.Paperwork;
using Generator.Paperwork.Printing;
using Generator.Rules;
using Generator.Testing;
using Microsoft.Playwright;
using UglyToad.PdfPig;

namespace Generator.Browser.Tests;

/// <summary>Whatever the fight and whatever the names, printed pages are filled, can be read, and break no word.</summary>
public sealed class RandomPrintTests(Browser browser, Papers papers) : IClassFixture<Browser>, IClassFixture<Papers>
{
    /// <summary>Routines of which all pages are printed; <c>GENERATOR_PAGES=30</c> asks for so many.</summary>
    private static readonly int Routines = int.TryParse(Environment.GetEnvironmentVariable("GENERATOR_PAGES"), NumberStyles.None, CultureInfo.InvariantCulture, out var more) ? more : 2;

    /// <summary>Words no longer than this, in writing that parts words, must stand on one line wherever they are; on paper every column has room for them.</summary>
    private const string Broken = """
        (() => {
          const faults = [], walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT), range = document.createRange();
          let seen = 0;
          for (let node = walker.nextNode(); node; node = walker.nextNode()) {
            if (!node.parentElement || node.parentElement.closest('script, style, svg, .unseen') || !node.parentElement.getClientRects().length) continue;
            for (const word of node.data.matchAll(/[\p{Script=Latin}\p{Script=Cyrillic}\p{M}]+/gu)) {
              if (word[0].length < 2 || word[0].length > 15) continue;
              seen++;
              range.setStart(node, word.index);
              range.setEnd(node, word.index + word[0].length);
              const boxes = [...range.getClientRects()].filter(b => b.width > 0);
              if (boxes.some(b => Math.abs(b.top - boxes[0].top) > b.height / 2 || b.left < boxes[0].left - 1)) faults.push(word[0] + ' in: ' + node.data.slice(0, 60));
            }
          }
          return [seen + '', ...faults];
        })()
        """;

    [Fact]
    public async Task Pages_are_filled_and_legible_and_no_word_is_broken()
    {
        var faults = new List<string>();
        var (pages, words) = (0, 0);
        for (var seed = 1; seed <= Routines; seed++)
        {
            var routine = RandomPagesTests.Named(seed);
            var folder = Path.GetDirectoryName(papers.Of($"random-{seed}", routine, "routine.html"))!;
            await File.WriteAllTextAsync(Path.Combine(folder, "pack.html"), PackPage.Of(PaperSource.Of(new Scene(routine.Brief, Papers.Book), routine).With(PaperOptions.Default with { Cards = Papers.Cards })), Encoding.UTF8);
            foreach (var path in Directory.GetFiles(folder, "*.html").Where(p => !p.EndsWith("wall.html", StringComparison.Ordinal)).Order(StringComparer.Ordinal))
            {
                // As wide as what a sheet of A4 has between its margins.
                await using var sheet = await browser.Open(path, new() { ViewportSize = new() { Width = 703, Height = 1000 } });
                using var pdf = PdfDocument.Open(await sheet.Page.PdfAsync(new() { Format = "A4", PreferCSSPageSize = true, PrintBackground = true }));
                pages += pdf.NumberOfPages;
                faults.AddRange(PrintedPages.Faults(pdf).Select(f => $"{seed} {Path.GetFileName(path)}: {f}"));
                await sheet.Page.EmulateMediaAsync(new() { Media = Media.Print });
                var told = await sheet.Eval<string[]>(Broken);
                words += int.Parse(told[0], CultureInfo.InvariantCulture);
                var lines = await sheet.Eval<double[]>("[...document.querySelectorAll('.sign-here')].map(e => e.getBoundingClientRect().width * 2.54 / 96)");
                faults.AddRange(lines.Where(l => l < 5).Select(l => FormattableString.Invariant($"{seed} {Path.GetFileName(path)}: a line of {l:0.0} cm to sign on")));
                if (await sheet.Eval<bool>("/[^_]_{3,8}(?!_)/.test(document.body.innerText)"))
                {
                    faults.Add($"{seed} {Path.GetFileName(path)}: a line too short to sign on");
                }

                faults.AddRange(told.Skip(1).Take(5).Select(f => $"{seed} {Path.GetFileName(path)}: broken: {f}"));
            }
        }

        Assert.True(faults.Count == 0, string.Join('\n', faults));
        Assert.True(pages > 15 * Routines && words > 2000 * Routines, $"{words} words on {pages} pages");
    }
}

using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Generator.Browser.Tests;

/// <summary>What axe finds on a page (WCAG 2.2 AA and what its makers hold for good besides), light and dark, on a phone and on a desk. The page must be open with its policy left aside.</summary>
internal static class Axe
{
    private static readonly int[] Widths = [390, 1280];

    /// <summary>The size of what is pressed is new in WCAG 2.2, and axe asks for it only where it is told to. What passes is not listed: that takes as long again.</summary>
    private static readonly AxeRunOptions Rules = new() { ResultTypes = [ResultType.Violations], Rules = new(StringComparer.Ordinal) { ["target-size"] = new RuleOptions { Enabled = true } } };

    /// <summary>Nothing else is another in the dark.</summary>
    private static readonly AxeRunOptions Colours = new() { ResultTypes = [ResultType.Violations], RunOnly = RunOnlyOptions.Rules("color-contrast") };

    /// <summary>Nothing is found on the page as it is.</summary>
    public static async Task IsClean(Sheet sheet) => Assert.Empty(await Faults(sheet, Rules));

    /// <summary>Nothing is found in any of the four, and nothing is wider than the screen. The page is left as wide and as light as it is seen last.</summary>
    public static async Task IsCleanEverywhere(Sheet sheet)
    {
        var faults = new List<string>();
        foreach (var width in Widths)
        {
            await sheet.Page.SetViewportSizeAsync(width, 900);
            foreach (var scheme in new[] { ColorScheme.Light, ColorScheme.Dark })
            {
                await sheet.Page.EmulateMediaAsync(new() { ColorScheme = scheme });
                faults.AddRange((await Faults(sheet, scheme == ColorScheme.Light ? Rules : Colours)).Select(f => $"{width} {scheme}: {f}"));
            }

            var wide = await sheet.Eval<int>("document.documentElement.scrollWidth");
            if (wide > width)
            {
                faults.Add($"{wide} wide on {width}: {await sheet.Eval<string>(RandomPagesTests.Widest)}");
            }

        }

        Assert.True(faults.Count == 0, string.Join('\n', faults));
    }

    private static async Task<IEnumerable<string>> Faults(Sheet sheet, AxeRunOptions rules)
    {
        var result = await sheet.Page.RunAxe(rules);
        Assert.Contains(result.Passes, p => p.Id == "color-contrast");
        return result.Violations.SelectMany(v => v.Nodes.Select(n => $"{v.Id}: {n.Html}"));
    }
}

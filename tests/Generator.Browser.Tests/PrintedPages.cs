using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Generator.Browser.Tests;

/// <summary>What is wrong with printed pages, by their letters alone; what stands in the margins, head, foot and number, is not what somebody prints them for.</summary>
internal static class PrintedPages
{
    /// <summary>Upper and lower margin in points, in which head and foot stand: 15 and 16 mm.</summary>
    private const double Upper = 42.5, Lower = 45.4;

    /// <summary>Least share of a page that is filled, from its top to its lowest letter: about a fifth.</summary>
    private const double Filled = 0.18;

    /// <summary>Fewest lines on the last page.</summary>
    private const int Lines = 4;

    /// <summary>Smallest letters in points, less a twentieth of rounding.</summary>
    private const double Smallest = 5.95;

    public static IReadOnlyList<string> Faults(PdfDocument pdf) => [.. pdf.GetPages().SelectMany(p => Faults(p, pdf.NumberOfPages))];

    private static IEnumerable<string> Faults(Page page, int pages)
    {
        var seen = page.Letters.Where(l => l.Value.Trim().Length > 0).ToList();
        var body = seen.Where(l => l.BoundingBox.Bottom > Lower && l.BoundingBox.Top < page.Height - Upper + 1).ToList();
        var lines = body.Select(l => Math.Round(l.StartBaseLine.Y / 3)).Distinct().Count();
        var filled = body.Count == 0 ? 0 : (page.Height - Upper - body.Min(l => l.BoundingBox.Bottom)) / (page.Height - Upper - Lower);
        if (page.Number < pages ? filled < Filled : lines < Lines)
        {
            yield return FormattableString.Invariant($"page {page.Number} of {pages} has {lines} lines on {filled:P0} of it: {string.Concat(body.Take(40).Select(l => l.Value))}");
        }

        var small = seen.Where(l => l.PointSize < Smallest).ToList();
        if (small.Count > 0)
        {
            yield return FormattableString.Invariant($"page {page.Number} has {small.Count} letters of {small.Min(l => l.PointSize):0.0} points and more: {string.Concat(small.Take(40).Select(l => l.Value))}");
        }
    }
}

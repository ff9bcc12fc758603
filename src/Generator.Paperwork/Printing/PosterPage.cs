using System.Globalization;
using Generator.Paperwork.Html;

namespace Generator.Paperwork.Printing;

/// <summary>
/// The poster that hangs on the wall of the rehearsal room: every move with its count, who comes and from where, and what is done. Capitals of counts and names are 8 mm high
/// on the smallest sheet: at 2 m that is as far from the eye as the letters of a book at 45 cm (8 mm / 2 m = 1.8 mm / 45 cm).
/// </summary>
public static class PosterPage
{
    public const string FileName = "wall.html";

    /// <summary>The page for a size of sheet.</summary>
    public static string Of(PaperSource source, PosterSize size)
    {
        var view = new PosterView(source);
        return HtmlPage.Of<PosterBody>("Wall: " + source.Brief.Title, view, source.Head, own: StyleOf(size, view));
    }

    private static string StyleOf(PosterSize size, PosterView view) =>
        string.Create(CultureInfo.InvariantCulture, $"{HtmlPage.BuiltIn("poster.css")}.poster {{ --call: calc({Math.Ceiling(view.CallWidth)} * var(--u)); }}\n@media print {{ :root {{ --u: {size.Unit}mm; }} }}\n@page {{ size: {size.Css}; }}\n");
}

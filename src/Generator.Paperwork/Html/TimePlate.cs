namespace Generator.Paperwork.Html;

/// <summary>The fight over time by itself, as markup for a page that has its own styles: weight, and a lane for each performer.</summary>
/// <param name="Svg">The picture.</param>
/// <param name="Left">Where count 1 is, in its units.</param>
/// <param name="Right">Where the fight ends.</param>
/// <param name="Width">Its width.</param>
/// <param name="Height">Its height.</param>
public sealed record TimePlate(string Svg, double Left, double Right, double Width, double Height)
{
    /// <param name="source">The routine; it may be empty.</param>
    /// <param name="wide">For a wide screen; else for a phone.</param>
    public static TimePlate Of(PaperSource source, bool wide)
    {
        var view = new GlanceView(source, wide);
        return new TimePlate(HtmlPage.Body<GlanceSvg>(new(StringComparer.Ordinal) { ["View"] = view }), view.Left, view.Right, view.Width, view.Height);
    }
}

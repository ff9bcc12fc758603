using System.Net;
using System.Text;
using Generator.Domain;
using Generator.Paperwork.Floor;
using Generator.Paperwork.Text;
using Generator.Rules.Shapes;

namespace Generator.Paperwork.Shaping;

/// <summary>
/// The shape of a fight as a picture (SVG): weight over time, who is on top, and a lane for each performer with moves, blows taken, falls, setbacks and outs. Whatever
/// a colour says, a form or a word says, too.
/// </summary>
public static class ShapePicture
{
    private const double Left = 150;

    private const double Wide = 1000;

    private const double Right = 24;

    private const double Bars = 120;

    private const double Lane = 34;

    private const string Font = "system-ui, 'Segoe UI', Roboto, 'Helvetica Neue', 'DejaVu Sans', sans-serif";

    /// <summary>The picture as text, ending with a line feed.</summary>
    /// <param name="shape">What is drawn.</param>
    /// <param name="head">What every paper says of itself.</param>
    public static string Of(FightShape shape, PaperHead head)
    {
        var texts = (string[])["Shape: " + head.Title, head.Identity + ".", .. head.Warning is null ? [] : new[] { $"{PaperHead.Sign} {head.Warning}" }, Cautions.Sheet, ShapeSheet.Caution];
        var lines = texts.SelectMany((t, i) => Wrapped(t, SizeOf(i)).Select(l => (Text: l, Size: SizeOf(i), Bold: i == 0 || Warns(t), Warns: Warns(t)))).ToList();
        var top = 16 + lines.Sum(l => l.Size * 1.4);
        var bars = top + 28;
        var strip = bars + Bars + 30;
        var lanes = strip + 56;
        var height = lanes + (shape.Wears.Count * Lane) + 62;
        var svg = new StringBuilder();
        svg.Append($"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {N(Left + Wide + Right)} {N(height)}\" width=\"{N(Left + Wide + Right)}\" height=\"{N(height)}\" font-family=\"{Font}\" role=\"img\">\n");
        svg.Append($"<title>{E("Shape of " + head.Title)}</title>\n<rect width=\"100%\" height=\"100%\" fill=\"#fff\"/>\n");
        svg.Append("<defs><pattern id=\"trouble\" width=\"6\" height=\"6\" patternUnits=\"userSpaceOnUse\" patternTransform=\"rotate(45)\"><rect width=\"6\" height=\"6\" fill=\"#ffd9cf\"/><rect width=\"3\" height=\"6\" fill=\"#a63a00\"/></pattern></defs>\n");
        var y = 12.0;
        foreach (var line in lines)
        {
            y += line.Size * 1.4;
            Text(svg, 14, y - (line.Size * 0.3), line.Text, line.Size, line.Warns ? "#8c1420" : "#14161b", line.Bold);
        }

        Counts(svg, shape, bars, lanes + (shape.Wears.Count * Lane));
        Intensities(svg, shape, bars);
        OnTop(svg, shape, strip);
        foreach (var wear in shape.Wears)
        {
            ShapeLanes.Draw(svg, shape, wear, lanes + ((wear.Performer + 1) * Lane), Lane, m => X(shape, m));
        }

        Text(svg, 14, height - 30, "Hero: a box is a move. Attackers: high box the swing of an attack, low box a move on them.   ● blow taken   ▼ fall   ✕ out   → runs off   ◆ setback", 12, "#3f4552", false);
        Text(svg, 14, height - 12, "Bars: weight of all contacts in four counts, their number above. Strip: plain where the hero scored last, striped where an attacker did, empty where it is even.", 12, "#3f4552", false);
        return svg.Append("</svg>\n").ToString();
    }

    private static bool Warns(string text) => text.StartsWith(PaperHead.Sign, StringComparison.Ordinal);

    internal static string N(double value) => Svg.Number(value);

    internal static string E(string text) => WebUtility.HtmlEncode(Page.Clean(text));

    internal static void Text(StringBuilder svg, double x, double y, string text, double size, string colour, bool bold) =>
        svg.Append($"<text x=\"{N(x)}\" y=\"{N(y)}\" font-size=\"{N(size)}\" fill=\"{colour}\"{(bold ? " font-weight=\"700\"" : string.Empty)}>{E(text)}</text>\n");

    private static double X(FightShape shape, double moment) => Left + (Wide * Math.Clamp(moment, 0, shape.End) / Math.Max(1, shape.End));

    private static double SizeOf(int line) => line == 0 ? 20 : 13;

    private static IEnumerable<string> Wrapped(string text, double size) => Page.Wrap(text, (int)((Left + Wide - 20) / (size * 0.62)));

    /// <summary>A faint line every eight counts, and its count.</summary>
    private static void Counts(StringBuilder svg, FightShape shape, double from, double to)
    {
        const int every = 8 * HalfCounts.PerCount;
        for (var moment = 0; moment <= shape.End; moment += every)
        {
            var x = N(X(shape, moment));
            svg.Append($"<path d=\"M{x},{N(from - 12)}L{x},{N(to)}\" stroke=\"#c9cdd5\" fill=\"none\"/>\n");
            Text(svg, X(shape, moment) + 2, from - 14, new HalfCounts(moment).ToCountText(), 11, "#3f4552", false);
        }
    }

    private static void Intensities(StringBuilder svg, FightShape shape, double top)
    {
        Text(svg, 14, top + 16, "Weight", 14, "#14161b", true);
        var most = Math.Max(1, shape.Intensity.Weight.Max());
        for (var i = 0; i < shape.Intensity.Weight.Count; i++)
        {
            var (from, to) = (X(shape, i * Intensity.Stretch), X(shape, (i + 1) * Intensity.Stretch));
            var tall = Bars * shape.Intensity.Weight[i] / most;
            if (to - from < 1 || shape.Intensity.Contacts[i] == 0)
            {
                continue;
            }

            svg.Append($"<rect x=\"{N(from + 1)}\" y=\"{N(top + Bars - tall + 12)}\" width=\"{N(Math.Max(1, to - from - 2))}\" height=\"{N(tall)}\" fill=\"#1c5aa6\"/>\n");
            Text(svg, from + 3, top + Bars - tall + 9, Words.Number(shape.Intensity.Contacts[i]), 11, "#14161b", false);
        }
    }

    private static void OnTop(StringBuilder svg, FightShape shape, double top)
    {
        Text(svg, 14, top + 16, "On top", 14, "#14161b", true);
        foreach (var span in shape.OnTop)
        {
            var fill = span.Who switch
            {
                Upper.Hero => "#bcd3ee",
                Upper.Attackers => "url(#trouble)",
                _ => "none",
            };
            svg.Append($"<rect x=\"{N(X(shape, span.From))}\" y=\"{N(top)}\" width=\"{N(X(shape, span.To) - X(shape, span.From))}\" height=\"22\" fill=\"{fill}\" stroke=\"#14161b\" stroke-width=\"0.6\"/>\n");
        }

        foreach (var setback in shape.Setbacks)
        {
            Text(svg, X(shape, setback.Time) - 5, top + 40, "◆", 14, "#a63a00", true);
        }
    }
}

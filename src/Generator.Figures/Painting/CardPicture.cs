using System.Globalization;
using System.Net;
using System.Text;
using Generator.Domain;
using Generator.Figures.Posing;

namespace Generator.Figures.Painting;

/// <summary>A card as SVG: its instants side by side, what each is, and under them that it is no instruction.</summary>
public static class CardPicture
{
    /// <summary>Stands under every picture.</summary>
    public const string Caution = "Blocking picture, not how it is taught.";

    private const double Height = 225;

    private const double Least = 150;

    private const double Space = 14;

    /// <param name="card">What is drawn.</param>
    /// <param name="titled">With the name of the record above; a sheet that has it beside leaves it out.</param>
    public static string Svg(Card card, bool titled = true)
    {
        var body = new StringBuilder();
        var top = titled ? 24.0 : 4.0;
        var x = Space;
        var painted = card.Shown.Select(frame => (Frame: frame, Painter: Painted(card, frame))).ToList();

        // Feet thrown up into the air need more room than people do.
        top += painted.Select(p => 20 - Height - p.Painter.Box.Top).Prepend(0).Max();
        foreach (var (frame, painter) in painted)
        {
            var (left, _, right, _) = painter.Box;
            var width = Math.Max(Least, right - left);
            var from = x + ((width - (right - left)) / 2) - left;
            body.Append(CultureInfo.InvariantCulture, $"<path d=\"M{N(x)} {N(top + Height - 18)}h{N(width)}\" stroke=\"#8a8a8a\" stroke-width=\"1\"/>");
            body.Append(CultureInfo.InvariantCulture, $"<g transform=\"translate({N(from)} {N(top + Height - 20)})\">{painter.Text}</g>");
            if (frame is { Hero: { } hero, Attacker: { } attacker })
            {
                // Under whoever does it.
                body.Append(CultureInfo.InvariantCulture, $"<path d=\"M{N(from + painter.Across(card.ByAttacker ? attacker : hero))} {N(top + Height - 17)}l5 7h-10z\" fill=\"#222\"/>");
            }

            body.Append(CultureInfo.InvariantCulture, $"<text x=\"{N(x + (width / 2))}\" y=\"{N(top + Height + 2)}\" text-anchor=\"middle\" font-size=\"11\">{frame.When}</text>");
            x += width + Space;
        }

        var (all, bottom) = (N(Math.Max(x, 250)), N(top + Height + 20));
        var name = WebUtility.HtmlEncode(card.Name);
        var title = titled ? $"<text x=\"{N(Space)}\" y=\"17\" font-size=\"14\" font-weight=\"bold\">{name}</text>" : string.Empty;
        return $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {all} {bottom}\" width=\"{all}\" height=\"{bottom}\" font-family=\"sans-serif\" role=\"img\" aria-label=\"{name}. {Caution}\">"
            + $"<rect width=\"100%\" height=\"100%\" fill=\"#fff\"/>{title}{body}<text x=\"{N(Space)}\" y=\"{N(top + Height + 14)}\" font-size=\"9.5\" fill=\"#444\">{Caution}</text></svg>\n";
    }

    private static Painter Painted(Card card, Frame frame)
    {
        var painter = new Painter(card, Ink.Own);
        painter.Both(frame);
        return painter;
    }

    private static string N(double value) => Painter.N(value);
}

using System.Text;
using Generator.Domain;
using Generator.Figures.Posing;

namespace Generator.Figures.Painting;

/// <summary>Draws any prop from the outlines of its kind: white with a heavy black line and a light one round it, so that it is seen before a dark body and a light one without any colour.</summary>
public static class PropPicture
{
    /// <summary>A plain stick.</summary>
    private static readonly IReadOnlyList<IReadOnlyList<PropPoint>> Stick = [[new(-0.1m, -0.03m), new(1, -0.03m), new(1, 0.03m), new(-0.1m, 0.03m)]];

    /// <summary>With what a page draws a prop.</summary>
    public const string Lines = "class=\"fp\"";

    private const string Around = "fill=\"#fff\" stroke=\"#fff\" stroke-width=\"4.6\" stroke-linejoin=\"round\"";

    private const string Line = "fill=\"#fff\" stroke=\"#000\" stroke-width=\"1.8\" stroke-linejoin=\"round\"";

    /// <summary>How long what is taken for a prop of a kind that the library no longer knows; metres.</summary>
    private const double Unknown = 0.5;

    /// <summary>The path of a prop that lies on a plan, its middle at 0, pointing right.</summary>
    /// <param name="kind">What it is; null for a kind that the library no longer knows.</param>
    /// <param name="metre">Units of the plan in a metre.</param>
    /// <param name="least">It is drawn no shorter than so many units, so that it can be seen.</param>
    public static string Lying(PropKind? kind, double metre, double least)
    {
        var length = Math.Max(least, (kind is null ? Unknown : kind.Length.Value / 100.0) * metre);
        var drawn = kind is { Drawn.Count: > 0 } ? kind.Drawn : Stick;
        return string.Concat(drawn.Select(o => "M" + string.Join('L', o.Select(p => Painter.N(((double)p.Along - 0.5) * length, 0) + " " + Painter.N((double)p.Aside * length, 0))) + (o.Count > 2 ? "Z" : string.Empty)));
    }

    /// <summary>Paths, and the box round them in units.</summary>
    /// <param name="prop">What is drawn.</param>
    /// <param name="hand">Where its hand is seen.</param>
    /// <param name="far">Where its far end is seen.</param>
    /// <param name="classes">With the classes of a page: fq round it, fp itself.</param>
    /// <param name="digits">Decimals of places.</param>
    internal static (string Text, double Left, double Top, double Right, double Bottom) Of(HeldProp prop, Seen hand, Seen far, bool classes, int digits)
    {
        // Only along itself is it shortened by pointing away: what is broad stays as broad, and a stick that points at the eye is still seen.
        var (dx, dy, length) = (far.X - hand.X, far.Y - hand.Y, prop.Hand.To(prop.Far));
        var seen = Math.Sqrt((dx * dx) + (dy * dy));
        var (x, y) = seen < 1e-6 ? (0.0, -1.0) : (dx / seen, dy / seen);
        var (path, box) = (new StringBuilder(), (Left: double.MaxValue, Top: double.MaxValue, Right: double.MinValue, Bottom: double.MinValue));
        foreach (var outline in prop.Kind.Drawn.Count > 0 ? prop.Kind.Drawn : Stick)
        {
            var points = outline.Select(p => (X: (hand.X + (dx * (double)p.Along) - (y * length * (double)p.Aside)) * Painter.Scale, Y: (hand.Y + (dy * (double)p.Along) + (x * length * (double)p.Aside)) * Painter.Scale)).ToList();
            path.Append('M').AppendJoin('L', points.Select(p => Painter.N(p.X, digits) + " " + Painter.N(p.Y, digits))).Append(points.Count > 2 ? "Z" : string.Empty);
            box = (Math.Min(box.Left, points.Min(p => p.X)), Math.Min(box.Top, points.Min(p => p.Y)), Math.Max(box.Right, points.Max(p => p.X)), Math.Max(box.Bottom, points.Max(p => p.Y)));
        }

        return ($"<path d=\"{path}\" {(classes ? "class=\"fq\"" : Around)}/><path d=\"{path}\" {(classes ? Lines : Line)}/>", box.Left, box.Top, box.Right, box.Bottom);
    }
}

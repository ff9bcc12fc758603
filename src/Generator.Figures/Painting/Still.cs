using System.Globalization;
using Generator.Figures.Bodies;
using Generator.Figures.Posing;

namespace Generator.Figures.Painting;

/// <summary>What a lens sees of bodies on a floor, in SVG with the classes of a page, 100 units a metre: the place looked at has its feet at 0, what is farther off is no smaller.</summary>
/// <param name="Body">What is drawn.</param>
/// <param name="Top">Upper edge of what is shown, below 0; units.</param>
/// <param name="Bottom">Lower edge.</param>
public sealed record Still(string Body, int Top, int Bottom)
{
    /// <summary>What is shown at least above the feet and below them, and how wide it is for its height; units.</summary>
    private const int Above = 205, Below = 35, WideFor = 23, HighFor = 24;

    /// <summary>Room round the joints of a body for its head and its shoes; units.</summary>
    private const int Room = 15;

    /// <summary>What an SVG shows of it; all stills have the same shape.</summary>
    public string ViewBox
    {
        get
        {
            var (high, half) = (Bottom - Top, HalfOf(Top, Bottom));
            return string.Create(CultureInfo.InvariantCulture, $"{-half} {Top} {2 * half} {high}");
        }
    }

    /// <summary>Nobody who stands before the middle of the picture is cut at head or feet: it shows as much more as that takes.</summary>
    /// <param name="bodies">Whoever is there; the hero wears a belt.</param>
    /// <param name="props">What they hold, and what lies there.</param>
    /// <param name="lens">Metres.</param>
    /// <param name="at">The place looked at, as high as what is looked at.</param>
    public static Still Of(IEnumerable<(Figure Body, bool IsHero)> bodies, IEnumerable<HeldProp> props, Vec lens, Vec at)
    {
        var eye = new PlacedEye(lens, at);
        var painter = new Painter(eye, Ink.Page, digits: 0);
        var seen = new List<(double Aside, int Top, int Bottom)>();
        foreach (var (body, isHero) in bodies)
        {
            painter.Body(body, isHero);
            var heights = Enum.GetValues<Joint>().Select(j => eye.See(body[j]).Y * Painter.Scale).ToList();
            seen.Add((Math.Abs(painter.Across(body)), (int)Math.Floor(heights.Min()) - Room, (int)Math.Ceiling(heights.Max()) + Room));
        }

        foreach (var prop in props)
        {
            painter.Prop(prop);
        }

        var (top, bottom) = (-Above, Below);
        while (seen.FindIndex(s => s.Aside <= HalfOf(top, bottom) && (s.Top < top || s.Bottom > bottom)) is var cut and >= 0)
        {
            (top, bottom) = (Math.Min(top, seen[cut].Top), Math.Max(bottom, seen[cut].Bottom));
        }

        return new Still(painter.Text, top, bottom);
    }

    private static int HalfOf(int top, int bottom) => (bottom - top) * WideFor / HighFor / 2;
}

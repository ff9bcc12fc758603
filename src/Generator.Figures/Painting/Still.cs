using Generator.Figures.Bodies;

namespace Generator.Figures.Painting;

/// <summary>What a lens sees of bodies on a floor, in SVG with the classes of a page, 100 units a metre: the place looked at has its feet at 0, what is farther off is no smaller.</summary>
/// <param name="Body">What is drawn.</param>
public sealed record Still(string Body)
{
    /// <summary>Half the width that is shown, and the height above the feet and below them; units.</summary>
    public const int HalfWidth = 115, Above = 205, Below = 35;

    /// <param name="bodies">Whoever is there; the hero wears a belt.</param>
    /// <param name="lens">Metres.</param>
    /// <param name="at">The place looked at, as high as what is looked at.</param>
    public static Still Of(IEnumerable<(Figure Body, bool IsHero)> bodies, Vec lens, Vec at)
    {
        var painter = new Painter(new PlacedEye(lens, at), Ink.Page, digits: 0);
        foreach (var (body, isHero) in bodies)
        {
            painter.Body(body, isHero);
        }

        return new Still(painter.Text);
    }
}

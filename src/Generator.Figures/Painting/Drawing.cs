using System.Globalization;
using Generator.Figures.Posing;

namespace Generator.Figures.Painting;

/// <summary>An instant as a part of a page: bodies in SVG with classes for their colours, 100 units a metre, feet at 0.</summary>
/// <param name="Left">Least x of what is drawn.</param>
/// <param name="Top">Least y, below 0.</param>
/// <param name="Right">Largest x.</param>
/// <param name="Body">What is drawn, without an element of its own round it.</param>
public sealed record Drawing(double Left, double Top, double Right, string Body)
{
    /// <summary>Units below the feet down to the line of the floor.</summary>
    public const double Floor = Painter.Floor;

    public double Width => Right - Left;

    /// <summary>The contact of a card, or the end of it with the sell.</summary>
    public static Drawing Of(Card card, bool end)
    {
        var painter = new Painter(card, Ink.Page, digits: 0);
        painter.Both(end ? card.End : card.Contact);
        var (left, top, right, _) = painter.Box;
        const double Beside = 6;
        var (from, to) = (Math.Floor(left - Beside), Math.Ceiling(right + Beside));
        var floor = string.Create(CultureInfo.InvariantCulture, $"<path class=\"fl\" d=\"M{Painter.N(from)} {Painter.N(Floor)}H{Painter.N(to)}\"/>");
        return new Drawing(from, Math.Floor(top - 2), to, floor + painter.Text);
    }
}

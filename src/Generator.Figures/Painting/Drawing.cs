using System.Globalization;
using Generator.Figures.Bodies;
using Generator.Figures.Posing;

namespace Generator.Figures.Painting;

/// <summary>An instant as a part of a page: bodies in SVG with classes for their colours, 100 units a metre, feet at 0.</summary>
/// <param name="Left">Least x of what is drawn.</param>
/// <param name="Top">Least y, below 0.</param>
/// <param name="Right">Largest x.</param>
/// <param name="Body">What is drawn, without an element of its own round it.</param>
public sealed record Drawing(double Left, double Top, double Right, string Body)
{
    /// <summary>Units below the feet up to the line of the floor.</summary>
    public const double Floor = 2;

    public double Width => Right - Left;

    /// <summary>Highest part of a thing that is drawn, in units.</summary>
    private const double Highest = 204;

    /// <summary>The contact of a card, or the end of it with the sell; a thing that it is done with stands behind the bodies.</summary>
    public static Drawing Of(Card card, bool end, DrawnThing? thing = null)
    {
        var painter = new Painter(card, Ink.Page, digits: 0);
        painter.Both(end ? card.End : card.Contact);
        var (left, top, right, _) = painter.Box;
        const double Beside = 6;
        var (low, outline) = thing is { } stands ? Outline(card, stands, ref left, ref right) : (top, string.Empty);
        top = Math.Min(top, low);
        var (from, to) = (Math.Floor(left - Beside), Math.Ceiling(right + Beside));
        var floor = string.Create(CultureInfo.InvariantCulture, $"<path class=\"fl\" d=\"M{Painter.N(from)} {Painter.N(Floor)}H{Painter.N(to)}\"/>");
        return new Drawing(from, Math.Floor(top - 2), to, floor + outline + painter.Text);
    }

    /// <summary>Its two sides and its top, which is left out where it goes on above the picture.</summary>
    private static (double Top, string Path) Outline(Card card, DrawnThing thing, ref double left, ref double right)
    {
        var eye = new Camera(card.Side, card.Round);
        var (one, other) = (eye.See(new Vec(0, 0, thing.From)).X * Painter.Scale, eye.See(new Vec(0, 0, thing.To)).X * Painter.Scale);
        (left, right) = (Math.Min(left, Math.Min(one, other)), Math.Max(right, Math.Max(one, other)));
        var high = -eye.See(new Vec(0, thing.High, 0)).Y * Painter.Scale;
        var top = -Math.Min(high, Highest);
        var (foot, head, near, far) = (Painter.N(Floor), Painter.N(top), Painter.N(one), Painter.N(other));
        return (top, $"<path class=\"fr\" d=\"M{near} {foot}V{head}H{far}V{foot}Z\"/><path class=\"ft\" d=\"M{near} {foot}V{head}{(high > Highest ? 'M' : 'L')}{far} {head}V{foot}\"/>");
    }
}

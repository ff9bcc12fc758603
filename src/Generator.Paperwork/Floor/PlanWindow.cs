using Generator.Domain;
using Generator.Rules.Bodies;

namespace Generator.Paperwork.Floor;

/// <summary>
/// The part of the floor that a plan shows, and the scale at which it does: everybody's places in the whole routine and the things that moves are done with, with room around them, so that
/// all plans of a routine lie on one another.
/// </summary>
public sealed class PlanWindow
{
    /// <summary>Longer side of the floor on the drawing, in its units.</summary>
    public const double Side = 400;

    /// <summary>Room around the floor for the hours of the clock.</summary>
    public const double Margin = 46;

    /// <summary>How far outside the floor's part an hour stands: clear of the signs of people at the edge.</summary>
    public const double HourOut = 26;

    /// <summary>Strip under it for the bar that shows a metre.</summary>
    public const double Foot = 16;

    /// <summary>Whoever is farther from every mark than this, in centimetres, is drawn at the edge.</summary>
    private const double Farthest = 700;

    private const double Around = 70;

    private const double Least = 160;

    private const double WholeSide = 230;

    /// <summary>Narrower than this, in units of the drawing, there is no room for a name and a distance.</summary>
    private const double Narrowest = 160;

    private readonly double left;
    private readonly double top;
    private readonly double right;
    private readonly double bottom;

    /// <param name="floor">The floor.</param>
    /// <param name="places">What is to be seen.</param>
    /// <param name="marks">The hero's marks, seen from the first.</param>
    public PlanWindow(FloorPlan floor, IEnumerable<Place> places, IReadOnlyList<Place> marks)
    {
        var (west, south) = (-floor.MarkX.Value, -floor.MarkY.Value);
        var (east, north) = (west + floor.Width.Value, south + floor.Depth.Value);
        var (x0, x1, y0, y1) = (-Least, Least, -Least, Least);
        foreach (var place in places)
        {
            var near = marks.MinBy(m => m.To(place));
            var held = near.Towards(place, Math.Min(1, Farthest / Math.Max(1, near.To(place))));
            (x0, x1) = (Math.Min(x0, held.X - Around), Math.Max(x1, held.X + Around));
            (y0, y1) = (Math.Min(y0, held.Y - Around), Math.Max(y1, held.Y + Around));
        }

        // An edge that is nearly reached is shown; nobody stands beyond it unless the routine is wrong.
        (left, right) = (Near(x0, west), Near(x1, east));
        (bottom, top) = (Near(y0, south), Near(y1, north));
        Scale = Side / Math.Max(right - left, top - bottom);
        (left, right) = Broadened();
        Floor = FloorOf(floor);
    }

    private PlanWindow(FloorPlan floor, double side, IEnumerable<Place> beside)
    {
        const double Beyond = 40;
        var (farX, farY) = (floor.Width - floor.MarkX, floor.Depth - floor.MarkY);
        var ways = floor.WaysIn.Select(w => new Place(w.X.Value - floor.MarkX.Value, w.Y.Value - floor.MarkY.Value)).Concat(beside).ToList();
        left = Math.Min(-floor.MarkX.Value, ways.Select(w => w.X).DefaultIfEmpty(0).Min()) - Beyond;
        right = Math.Max(farX.Value, ways.Select(w => w.X).DefaultIfEmpty(0).Max()) + Beyond;
        bottom = Math.Min(-floor.MarkY.Value, ways.Select(w => w.Y).DefaultIfEmpty(0).Min()) - Beyond;
        top = Math.Max(farY.Value, ways.Select(w => w.Y).DefaultIfEmpty(0).Max()) + Beyond;
        Scale = side / Math.Max(right - left, top - bottom);
        (left, right) = Broadened();
        Floor = FloorOf(floor);
    }

    /// <summary>The whole floor with its ways in; small, unless a longer side is wanted.</summary>
    public static PlanWindow Whole(FloorPlan floor, double side = WholeSide) => new(floor, side, []);

    /// <summary>The whole floor with what stands beside it.</summary>
    public static PlanWindow Beside(FloorPlan floor, IEnumerable<Place> beside) => new(floor, Side, beside);

    /// <summary>The corners of what is shown that lie towards 9 and 12, and towards 3 and 6.</summary>
    public (Place First, Place Last) Seen => (new Place(left, top), new Place(right, bottom));

    /// <summary>Units of the drawing for one centimetre.</summary>
    public double Scale { get; }

    public double Width => ((right - left) * Scale) + (2 * Margin);

    public double Height => ((top - bottom) * Scale) + (2 * Margin) + Foot;

    /// <summary>The whole floor on the drawing; it may reach beyond it.</summary>
    public Box Floor { get; }

    /// <summary>What is shown, without the margin.</summary>
    public Box Inner => new(Margin, Margin, Width - (2 * Margin), Height - (2 * Margin) - Foot);

    /// <summary>The four sides of the floor as far as it is shown, each torn where only the drawing ends.</summary>
    public IEnumerable<(Point From, Point To, bool IsTorn)> Sides
    {
        get
        {
            var shown = Floor.Within(Inner);
            yield return (new Point(shown.X, shown.Y), new Point(shown.Right, shown.Y), shown.Y > Floor.Y + 0.5);
            yield return (new Point(shown.Right, shown.Y), new Point(shown.Right, shown.Bottom), shown.Right < Floor.Right - 0.5);
            yield return (new Point(shown.Right, shown.Bottom), new Point(shown.X, shown.Bottom), shown.Bottom < Floor.Bottom - 0.5);
            yield return (new Point(shown.X, shown.Bottom), new Point(shown.X, shown.Y), shown.X > Floor.X + 0.5);
        }
    }

    public Point Mark => Of(Place.Mark);

    public Point Of(Place place) => new(((place.X - left) * Scale) + Margin, ((top - place.Y) * Scale) + Margin);

    /// <summary>The place, drawn back along the line to the mark until it is inside by so many units.</summary>
    public Point Held(Place place, double inside)
    {
        var (point, share) = (Of(place), Kept(place, inside));
        return new Point(Mark.X + ((point.X - Mark.X) * share), Mark.Y + ((point.Y - Mark.Y) * share));
    }

    /// <summary>Somebody or something there is drawn where it is.</summary>
    public bool Keeps(Place place, double inside) => Kept(place, inside) == 1;

    public bool Shows(Place place) => Inner.Holds(new Box(Of(place).X, Of(place).Y, 0, 0));

    /// <summary>The share of the way from the mark that is drawn; 1 for all of it.</summary>
    private double Kept(Place place, double inside)
    {
        var point = Of(place);
        return Math.Min(Share(point.X, Mark.X, Margin + inside, Width - Margin - inside), Share(point.Y, Mark.Y, Margin + inside, Height - Foot - Margin - inside));
    }

    private Box FloorOf(FloorPlan floor) => new(
        ((-floor.MarkX.Value - left) * Scale) + Margin,
        ((top - floor.Depth.Value + floor.MarkY.Value) * Scale) + Margin,
        floor.Width.Value * Scale,
        floor.Depth.Value * Scale);

    private (double Left, double Right) Broadened()
    {
        var lacking = Math.Max(0, (Narrowest / Scale) - (right - left)) / 2;
        return (left - lacking, right + lacking);
    }

    private static double Near(double wanted, double edge) => Math.Abs(wanted - edge) < Around * 2 || Math.Abs(edge) < Math.Abs(wanted) ? Beyond(wanted, edge) : wanted;

    /// <summary>The edge with a strip of 15 cm beyond it, unless somebody is farther out.</summary>
    private static double Beyond(double wanted, double edge)
    {
        var strip = edge + (15 * Math.Sign(edge));
        var needed = wanted - (Math.Sign(wanted) * (Around - 30));
        return Math.Abs(needed) > Math.Abs(strip) ? needed : strip;
    }

    private static double Share(double value, double centre, double least, double most)
    {
        if (value < least && centre > least)
        {
            return (centre - least) / (centre - value);
        }

        return value > most && centre < most ? (most - centre) / (value - centre) : 1;
    }
}

namespace Generator.Outside.Tests;

/// <summary>
/// What a body covers of the floor: everything within 25 cm of a straight line. The line of somebody upright is a point; somebody who lies is as long as they are tall. Centimetres from the mark.
/// </summary>
/// <param name="Lies">Stretched out on the floor, not upright.</param>
internal readonly record struct Outline(double X1, double Y1, double X2, double Y2, bool Lies)
{
    public const double Radius = 25;

    public static Outline Upright(double x, double y) => new(x, y, x, y, false);

    /// <summary>Head outwards, feet at the place.</summary>
    public static Outline FeetNear(double x, double y, double stature) => Along(x, y, 0, stature - (2 * Radius), Out(x, y));

    /// <summary>Square to the line from the mark, the middle of the body at the place.</summary>
    public static Outline Across(double x, double y, double stature)
    {
        var (ox, oy) = Out(x, y);
        return Along(x, y, (2 * Radius) - stature, stature - (2 * Radius), (oy / 2, -ox / 2));
    }

    /// <summary>The same body somewhere else.</summary>
    public Outline MovedBy(double x, double y) => new(X1 + x, Y1 + y, X2 + x, Y2 + y, Lies);

    /// <summary>How far the two lines are from each other; less than two radii is one body in another.</summary>
    public double Apart(Outline other)
    {
        if (Crosses(other))
        {
            return 0;
        }

        var ends = new[] { From(other.X1, other.Y1), From(other.X2, other.Y2), other.From(X1, Y1), other.From(X2, Y2) };
        return ends.Min();
    }

    private static Outline Along(double x, double y, double start, double end, (double X, double Y) way) =>
        new(x + (start * way.X), y + (start * way.Y), x + (end * way.X), y + (end * way.Y), true);

    private static (double X, double Y) Out(double x, double y)
    {
        var length = Math.Sqrt((x * x) + (y * y));
        return length < 0.5 ? (0, 1) : (x / length, y / length);
    }

    private double From(double x, double y)
    {
        var (dx, dy) = (X2 - X1, Y2 - Y1);
        var square = (dx * dx) + (dy * dy);
        var share = square == 0 ? 0 : Math.Clamp((((x - X1) * dx) + ((y - Y1) * dy)) / square, 0, 1);
        var (px, py) = (X1 + (share * dx) - x, Y1 + (share * dy) - y);
        return Math.Sqrt((px * px) + (py * py));
    }

    private bool Crosses(Outline other) =>
        Side(other.X1, other.Y1) * Side(other.X2, other.Y2) < 0 && other.Side(X1, Y1) * other.Side(X2, Y2) < 0;

    private double Side(double x, double y) => ((X2 - X1) * (y - Y1)) - ((Y2 - Y1) * (x - X1));
}

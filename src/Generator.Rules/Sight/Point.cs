using Generator.Domain;

namespace Generator.Rules.Sight;

/// <summary>A place in metres: x towards 3 o'clock, y towards 12, z up, the mark at 0.</summary>
internal readonly record struct Point(double X, double Y, double Z)
{
    public static Point Of(int bearing, int centimetres, double height)
    {
        var (x, y) = new Bearing(bearing).Direction;
        return new Point(centimetres / 100.0 * x, centimetres / 100.0 * y, height);
    }

    public double Length => Math.Sqrt((X * X) + (Y * Y) + (Z * Z));

    public static Point operator -(Point left, Point right) => new(left.X - right.X, left.Y - right.Y, left.Z - right.Z);
}

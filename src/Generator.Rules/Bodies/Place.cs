using Generator.Domain;

namespace Generator.Rules.Bodies;

/// <summary>A place on the floor in centimetres from the mark: <paramref name="X"/> grows towards 3 o'clock, <paramref name="Y"/> towards 12.</summary>
public readonly record struct Place(double X, double Y)
{
    /// <summary>The place on a bearing (half hours, any whole number) at a distance from the mark.</summary>
    public static Place At(int bearing, double distance)
    {
        var way = new Bearing(bearing).HalfHours;
        return new Place(distance * FloorGeometry.Sine(way), distance * FloorGeometry.Cosine(way));
    }

    /// <summary>The hero's mark; where there are several, the first.</summary>
    public static readonly Place Mark = new(0, 0);

    /// <summary>As it is seen from the mark: the nearest half hour, of two equally near the first clockwise from 12, and the distance to the centimetre.</summary>
    public (int Bearing, int Distance) Seen()
    {
        var (bearing, along) = (0, double.NegativeInfinity);
        for (var b = 0; b < Domain.Bearing.Circle; b++)
        {
            var there = (X * FloorGeometry.Sine(b)) + (Y * FloorGeometry.Cosine(b));
            if (there > along + 1e-9)
            {
                (bearing, along) = (b, there);
            }
        }

        return (bearing, FloorGeometry.Whole(To(default)));
    }

    /// <summary>To the millimetre, so that one place that was worked out in two ways is one; 0 is never negative.</summary>
    public Place Rounded() => new(Math.Round(X, 1) + 0.0, Math.Round(Y, 1) + 0.0);

    /// <summary>Centimetres to another place.</summary>
    public double To(Place other) => Length(other.X - X, other.Y - Y);

    /// <summary>The point at a share of the way to another, 0 to 1.</summary>
    public Place Towards(Place other, double share) => new(X + ((other.X - X) * share), Y + ((other.Y - Y) * share));

    public static Place operator +(Place left, Place right) => new(left.X + right.X, left.Y + right.Y);

    public static Place operator -(Place left, Place right) => new(left.X - right.X, left.Y - right.Y);

    /// <summary>Centimetres to the nearest point between two others.</summary>
    public double ToLine(Place start, Place end)
    {
        var (dx, dy) = (end.X - start.X, end.Y - start.Y);
        var square = (dx * dx) + (dy * dy);
        var share = square == 0 ? 0 : Math.Clamp((((X - start.X) * dx) + ((Y - start.Y) * dy)) / square, 0, 1);
        return Length(start.X + (share * dx) - X, start.Y + (share * dy) - Y);
    }

    /// <summary>Centimetres between two lines; 0 where they cross.</summary>
    public static double Between(Place start, Place end, Place first, Place last)
    {
        if (Side(start, end, first) * Side(start, end, last) < 0 && Side(first, last, start) * Side(first, last, end) < 0)
        {
            return 0;
        }

        var one = Math.Min(first.ToLine(start, end), last.ToLine(start, end));
        return Math.Min(one, Math.Min(start.ToLine(first, last), end.ToLine(first, last)));
    }

    private static double Side(Place start, Place end, Place other) =>
        ((end.X - start.X) * (other.Y - start.Y)) - ((end.Y - start.Y) * (other.X - start.X));

    private static double Length(double x, double y) => Math.Sqrt((x * x) + (y * y));
}

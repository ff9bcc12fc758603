namespace Generator.Paperwork.Floor;

/// <summary>An upright rectangle on the drawing: left, top, width and height in its units.</summary>
public readonly record struct Box(double X, double Y, double Width, double Height)
{
    public double Right => X + Width;

    public double Bottom => Y + Height;

    public static Box Around(double x, double y, double width, double height) => new(x - (width / 2), y - (height / 2), width, height);

    /// <summary>They share more than an edge.</summary>
    public bool Overlaps(Box other) => X < other.Right && other.X < Right && Y < other.Bottom && other.Y < Bottom;

    /// <summary>What lies inside another one.</summary>
    public Box Within(Box other)
    {
        var (x, y) = (Math.Max(X, other.X), Math.Max(Y, other.Y));
        return new Box(x, y, Math.Max(0, Math.Min(Right, other.Right) - x), Math.Max(0, Math.Min(Bottom, other.Bottom) - y));
    }

    public bool Holds(Point point) => point.X >= X && point.X <= Right && point.Y >= Y && point.Y <= Bottom;

    /// <summary>The point of the box that lies nearest to another.</summary>
    public Point Nearest(Point point) => new(Math.Clamp(point.X, X, Right), Math.Clamp(point.Y, Y, Bottom));

    public bool Holds(Box other) => other.X >= X && other.Y >= Y && other.Right <= Right && other.Bottom <= Bottom;
}

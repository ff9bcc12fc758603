namespace Generator.Paperwork.Floor;

/// <summary>A body on the floor, to scale and where it lies, whatever becomes of the sign beside it.</summary>
/// <param name="Performer">Number in the brief, from 0; −1 for the hero.</param>
/// <param name="Feet">Where the feet are on the drawing.</param>
/// <param name="Turned">Degrees clockwise by which a body is turned whose head is below its feet on the drawing.</param>
/// <param name="Body">The outline round the feet, before it is turned and moved.</param>
/// <param name="Style">here, out or landing.</param>
public sealed record Outline(int Performer, Point Feet, double Turned, Box Body, string Style)
{
    /// <summary>An upright box shares more than an edge with the body: their shadows overlap along the sides of both.</summary>
    public bool Overlaps(Box box)
    {
        var (sin, cos) = Math.SinCos(Turned * Math.PI / 180);
        Point[] own = [.. Corners(Body).Select(c => new Point(Feet.X + (c.X * cos) - (c.Y * sin), Feet.Y + (c.X * sin) + (c.Y * cos)))];
        Point[] other = [.. Corners(box).Select(c => (X: c.X - Feet.X, Y: c.Y - Feet.Y)).Select(c => new Point((c.X * cos) + (c.Y * sin), (c.Y * cos) - (c.X * sin)))];
        return Around(own).Overlaps(box) && Around(other).Overlaps(Body);
    }

    private static Point[] Corners(Box box) => [new(box.X, box.Y), new(box.Right, box.Y), new(box.Right, box.Bottom), new(box.X, box.Bottom)];

    private static Box Around(Point[] points)
    {
        var (left, top) = (points.Min(p => p.X), points.Min(p => p.Y));
        return new Box(left, top, points.Max(p => p.X) - left, points.Max(p => p.Y) - top);
    }
}

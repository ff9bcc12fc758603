namespace Generator.Paperwork.Floor;

/// <summary>What a label can speak of, as discs on the drawing: a marker is one, a body that lies there is a row of them.</summary>
/// <param name="Owner">Whose it is: signs of one owner are not taken for one another.</param>
/// <param name="Discs">Middle and radius of each; at least one.</param>
public sealed record Sign(string Owner, IReadOnlyList<(Point At, double Radius)> Discs)
{
    public static Sign Of(string owner, Point at, double radius) => new(owner, [(at, radius)]);

    /// <summary>Somebody who lies, from the feet to the head.</summary>
    public static Sign Of(string owner, Outline body)
    {
        var (sin, cos) = Math.SinCos(body.Turned * Math.PI / 180);
        var radius = Math.Min(body.Body.Width, body.Body.Height) / 2;
        var far = Math.Max(0, body.Body.Height - (2 * radius));
        var steps = Math.Max(1, (int)Math.Ceiling(far / Math.Max(1, radius)));
        return new(owner, [.. Enumerable.Range(0, steps + 1).Select(i => far * i / steps).Select(t => (new Point(body.Feet.X - (sin * t), body.Feet.Y + (cos * t)), radius))]);
    }

    /// <summary>How far a box is from it; below 0 where it lies on it.</summary>
    public double Gap(Box box) => Discs.Min(d => Far(box, d.At) - d.Radius);

    /// <summary>Where a line from the box to it ends: at its rim.</summary>
    public Point End(Box box)
    {
        var (at, radius) = Discs.MinBy(d => Far(box, d.At) - d.Radius);
        var (near, share) = (box.Nearest(at), Math.Min(1, radius / Math.Max(1, Far(box, at))));
        return new Point(at.X + ((near.X - at.X) * share), at.Y + ((near.Y - at.Y) * share));
    }

    private static double Far(Box box, Point point)
    {
        var near = box.Nearest(point);
        return Math.Sqrt(((near.X - point.X) * (near.X - point.X)) + ((near.Y - point.Y) * (near.Y - point.Y)));
    }
}

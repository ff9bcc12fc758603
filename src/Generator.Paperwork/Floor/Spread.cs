namespace Generator.Paperwork.Floor;

/// <summary>Moves markers that would be drawn over one another apart, so that every sign can be read; where they stand is kept.</summary>
internal static class Spread
{
    /// <summary>Two markers closer than this, in units of the drawing, hide each other.</summary>
    public const double Apart = Shapes.Radius * 2.15;

    private const int Directions = 16;

    private const int Circles = 8;

    /// <summary>The same markers in the same order; the first ones keep their places.</summary>
    /// <param name="markers">Who stands where.</param>
    /// <param name="fixtures">Cameras: signs that stay where they are.</param>
    /// <param name="inner">Where markers may be drawn.</param>
    public static IReadOnlyList<Marker> Of(IReadOnlyList<Marker> markers, IReadOnlyList<Point> fixtures, Box inner)
    {
        var placed = new List<Marker>();
        foreach (var marker in markers)
        {
            placed.Add(marker with { At = Candidates(marker.Stands, inner).FirstOrDefault(c => placed.TrueForAll(p => Distance(p.At, c) >= Apart) && fixtures.All(f => Distance(f, c) >= Apart), marker.Stands) });
        }

        return placed;
    }

    private static double Distance(Point one, Point other) => Math.Sqrt(((one.X - other.X) * (one.X - other.X)) + ((one.Y - other.Y) * (one.Y - other.Y)));

    private static IEnumerable<Point> Candidates(Point stands, Box inner)
    {
        yield return stands;
        for (var circle = 1; circle <= Circles; circle++)
        {
            for (var i = 0; i < Directions; i++)
            {
                var (sin, cos) = Math.SinCos(i * 2 * Math.PI / Directions);
                var point = new Point(stands.X + (cos * circle * Apart / 2), stands.Y + (sin * circle * Apart / 2));
                if (inner.Holds(Box.Around(point.X, point.Y, Shapes.Radius * 2, Shapes.Radius * 2)))
                {
                    yield return point;
                }
            }
        }
    }
}

namespace Generator.Paperwork.Floor;

/// <summary>Moves markers that would be drawn over one another apart, so that every sign can be read; where they stand is kept.</summary>
internal static class Spread
{
    /// <summary>How far a marker goes at once to find room, in units of the drawing.</summary>
    private const double Pace = Shapes.Radius;

    private const int Directions = 16;

    private const int Circles = 9;

    /// <summary>The same markers in the same order; the first ones keep their places.</summary>
    /// <param name="markers">Who stands where.</param>
    /// <param name="fixtures">Room of cameras: signs that stay where they are.</param>
    /// <param name="inner">Where markers may be drawn.</param>
    public static IReadOnlyList<Marker> Of(IReadOnlyList<Marker> markers, IReadOnlyList<Box> fixtures, Box inner)
    {
        var placed = new List<Marker>();
        foreach (var marker in markers)
        {
            placed.Add(Candidates(marker.Stands, inner).Select(c => marker with { At = c }).FirstOrDefault(c => IsFree(Shapes.Around(c)), marker with { At = marker.Stands }));
        }

        return placed;

        bool IsFree(Box box) => placed.TrueForAll(p => !Shapes.Around(p).Overlaps(box)) && fixtures.All(f => !f.Overlaps(box));
    }

    private static IEnumerable<Point> Candidates(Point stands, Box inner)
    {
        yield return stands;
        for (var circle = 1; circle <= Circles; circle++)
        {
            for (var i = 0; i < Directions; i++)
            {
                var (sin, cos) = Math.SinCos(i * 2 * Math.PI / Directions);
                var point = new Point(stands.X + (cos * circle * Pace), stands.Y + (sin * circle * Pace));
                if (inner.Holds(Box.Around(point.X, point.Y, Shapes.Radius * 2, Shapes.Radius * 2)))
                {
                    yield return point;
                }
            }
        }
    }
}

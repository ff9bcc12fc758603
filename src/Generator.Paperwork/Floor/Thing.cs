namespace Generator.Paperwork.Floor;

/// <summary>An obstacle on a plan.</summary>
public sealed record Thing(Box Box, string Name)
{
    /// <summary>Breadth of the strips of an obstacle, over which nothing can be read.</summary>
    public const double Hatched = 8;

    /// <summary>The middles of the strips of which it consists, from left to right.</summary>
    public IEnumerable<IReadOnlyList<Point>> Strips
    {
        get
        {
            for (var y = Box.Y + (Hatched / 2); y < Box.Bottom; y += Hatched)
            {
                yield return [new Point(Box.X, y), new Point(Box.Right, y)];
            }
        }
    }
}

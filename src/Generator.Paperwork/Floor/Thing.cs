using Generator.Domain;
using Generator.Paperwork.Text;
using Generator.Rules.Bodies;

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

    /// <summary>An obstacle of the floor, where it stands on the plan.</summary>
    public static Thing Of(Obstacle obstacle, FloorPlan floor, PlanWindow window)
    {
        var corner = window.Of(new Place(obstacle.X.Value - floor.MarkX.Value, obstacle.Y.Value + obstacle.Depth.Value - floor.MarkY.Value));
        return new Thing(new Box(corner.X, corner.Y, obstacle.Width.Value * window.Scale, obstacle.Depth.Value * window.Scale), Page.Clean(obstacle.Name));
    }
}

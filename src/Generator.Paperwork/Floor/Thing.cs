using Generator.Domain;
using Generator.Paperwork.Text;
using Generator.Rules.Bodies;

namespace Generator.Paperwork.Floor;

/// <summary>An obstacle or a mat on a plan.</summary>
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
        return new Thing(BoxOf(obstacle.X, obstacle.Y, obstacle.Width, obstacle.Depth, floor, window), Page.Clean(obstacle.Name));
    }

    /// <summary>A mat, likewise.</summary>
    public static Thing Of(Mat mat, FloorPlan floor, PlanWindow window) => new(BoxOf(mat.X, mat.Y, mat.Width, mat.Depth, floor, window), Page.Clean(mat.Name));

    private static Box BoxOf(Centimetres x, Centimetres y, Centimetres width, Centimetres depth, FloorPlan floor, PlanWindow window)
    {
        var corner = window.Of(new Place(x.Value - floor.MarkX.Value, y.Value + depth.Value - floor.MarkY.Value));
        return new Box(corner.X, corner.Y, width.Value * window.Scale, depth.Value * window.Scale);
    }
}

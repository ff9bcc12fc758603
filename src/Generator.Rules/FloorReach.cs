using Generator.Domain;
using Generator.Rules.Bodies;

namespace Generator.Rules;

/// <summary>
/// How far from the mark somebody can stand or be sent on each bearing: to the floor's edge, or to the first obstacle or camera in the way,
/// less the clearance square to each. Behind an obstacle the floor counts as closed.
/// </summary>
public sealed class FloorReach
{
    private readonly int[] farthest = new int[Bearing.Circle];
    private readonly string?[] inTheWay = new string?[Bearing.Circle];

    private readonly FloorPlan floor;
    private readonly int clearance;
    private readonly IReadOnlyList<CameraPosts.Post> posts;

    public FloorReach(FloorPlan floor, Settle settle, IReadOnlyList<Camera>? cameras = null)
    {
        (this.floor, clearance, posts) = (floor, settle.EdgeClearance.Value, CameraPosts.Of(cameras ?? []));
        for (var b = 0; b < Bearing.Circle; b++)
        {
            var (dx, dy) = new Bearing(b).Direction;
            var edge = Math.Min(ToWall(dx, floor.MarkX.Value, floor.Width.Value, clearance), ToWall(dy, floor.MarkY.Value, floor.Depth.Value, clearance));
            foreach (var obstacle in floor.Obstacles)
            {
                Close(obstacle.Name, ToObstacle(dx, dy, floor, obstacle, clearance));
            }

            foreach (var post in posts)
            {
                Close(post.Text, post.Along(dx, dy, clearance));
            }

            farthest[b] = (int)Math.Floor(edge + 1e-6);

            void Close(string name, double distance)
            {
                if (distance < edge)
                {
                    (edge, inTheWay[b]) = (distance, name);
                }
            }
        }
    }

    /// <summary>Farthest distance from the mark in centimetres on a bearing (half hours, any whole number).</summary>
    public int this[int bearing] => farthest[new Bearing(bearing).HalfHours];

    /// <summary>The obstacle or camera that closes the floor on a bearing; null where its edge does.</summary>
    public string? InTheWay(int bearing) => inTheWay[new Bearing(bearing).HalfHours];

    /// <summary>A place is on the floor, clear of its edge, of obstacles and of cameras, to the centimetre.</summary>
    public bool Holds(Place place)
    {
        var (x, y) = (FloorGeometry.Whole(floor.MarkX.Value + place.X), FloorGeometry.Whole(floor.MarkY.Value + place.Y));
        return x >= clearance && y >= clearance && x <= floor.Width.Value - clearance && y <= floor.Depth.Value - clearance
            && floor.Obstacles.All(o => x <= o.X.Value - clearance || x >= o.X.Value + o.Width.Value + clearance || y <= o.Y.Value - clearance || y >= o.Y.Value + o.Depth.Value + clearance)
            && posts.All(p => FloorGeometry.Whole(place.To(new Place(p.X, p.Y))) >= Camera.Around.Value + clearance);
    }

    private static double ToWall(double step, int mark, int size, int clearance)
    {
        if (Math.Abs(step) < 1e-9)
        {
            return double.MaxValue;
        }

        return step > 0 ? (size - clearance - mark) / step : (mark - clearance) / -step;
    }

    /// <summary>Distance along the ray to the obstacle grown by the clearance; unlimited when the ray passes it by.</summary>
    private static double ToObstacle(double dx, double dy, FloorPlan floor, Obstacle obstacle, int clearance)
    {
        var (enterX, leaveX) = Slab(dx, obstacle.X.Value - clearance - floor.MarkX.Value, obstacle.X.Value + obstacle.Width.Value + clearance - floor.MarkX.Value);
        var (enterY, leaveY) = Slab(dy, obstacle.Y.Value - clearance - floor.MarkY.Value, obstacle.Y.Value + obstacle.Depth.Value + clearance - floor.MarkY.Value);
        var enter = Math.Max(enterX, enterY);
        var leave = Math.Min(leaveX, leaveY);
        return enter <= leave && leave >= 0 ? Math.Max(0, enter) : double.MaxValue;
    }

    private static (double Enter, double Leave) Slab(double step, double low, double high)
    {
        if (Math.Abs(step) < 1e-9)
        {
            return low <= 0 && high >= 0 ? (double.MinValue, double.MaxValue) : (double.MaxValue, double.MinValue);
        }

        return step > 0 ? (low / step, high / step) : (high / step, low / step);
    }
}

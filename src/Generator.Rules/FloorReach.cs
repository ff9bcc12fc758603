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

    /// <param name="floor">The floor, its mark the one round which is looked.</param>
    /// <param name="settle">What is kept clear.</param>
    /// <param name="cameras">Cameras as seen from the first mark.</param>
    /// <param name="mark">That mark as seen from the first.</param>
    public FloorReach(FloorPlan floor, Settle settle, IReadOnlyList<Camera>? cameras = null, Place mark = default)
    {
        (this.floor, clearance, posts) = (floor, settle.EdgeClearance.Value, [.. CameraPosts.Of(cameras ?? []).Select(p => mark == default ? p : p with { X = p.X - mark.X, Y = p.Y - mark.Y })]);
        for (var b = 0; b < Bearing.Circle; b++)
        {
            var (dx, dy) = new Bearing(b).Direction;
            var edge = ToEdge(dx, dy, clearance);
            foreach (var obstacle in floor.Obstacles)
            {
                Close(obstacle.Name, ToObstacle(dx, dy, obstacle));
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
    public bool Holds(Place place) => Room(place) >= clearance;

    /// <summary>Centimetres from a place to the nearest of the floor's edge, square to it, the obstacles and the cameras with their operators; below 0 beyond the edge.</summary>
    public int Room(Place place)
    {
        var (x, y) = (FloorGeometry.Whole(floor.MarkX.Value + place.X), FloorGeometry.Whole(floor.MarkY.Value + place.Y));
        var room = Math.Min(Math.Min(x, floor.Width.Value - x), Math.Min(y, floor.Depth.Value - y));
        for (var i = 0; i < floor.Obstacles.Count; i++)
        {
            room = Math.Min(room, (int)floor.Obstacles[i].Away(x, y));
        }

        for (var i = 0; i < posts.Count; i++)
        {
            room = Math.Min(room, FloorGeometry.Whole(place.To(new Place(posts[i].X, posts[i].Y))) - Camera.Around.Value);
        }

        return room;
    }

    /// <summary>The obstacle or camera that a place is not clear of; null for none.</summary>
    public string? On(Place place) =>
        floor.Obstacles.FirstOrDefault(o => Away(o, place) < clearance)?.Name ?? posts.FirstOrDefault(p => place.To(new Place(p.X, p.Y)) < Camera.Around.Value + clearance)?.Text;

    /// <summary>Centimetres from the mark to the very edge of the floor on a bearing in half hours.</summary>
    public double Edge(int bearing) => Place.At(bearing, 1) is var step ? ToEdge(step.X, step.Y, 0) : 0;

    /// <summary>The places on the floor's edge straight across from one on the floor, one a side.</summary>
    public Place[] EdgesFrom(Place place) =>
    [
        place with { X = -floor.MarkX.Value },
        place with { X = floor.Width.Value - floor.MarkX.Value },
        place with { Y = -floor.MarkY.Value },
        place with { Y = floor.Depth.Value - floor.MarkY.Value },
    ];

    /// <summary>
    /// What stands between two places, so that nobody can walk straight from one to the other; null for nothing. All clearance is kept, or as much as the nearer of the two has.
    /// </summary>
    /// <param name="from">One place.</param>
    /// <param name="to">The other.</param>
    /// <param name="over">A thing that is gone over; null for none.</param>
    public string? Between(Place from, Place to, Obstacle? over = null)
    {
        foreach (var obstacle in floor.Obstacles.Where(o => o != over))
        {
            var margin = Math.Min(clearance, Math.Min(Away(obstacle, from), Away(obstacle, to))) - 1e-6;
            if (obstacle.IsCrossed(margin, floor.MarkX.Value + from.X, floor.MarkY.Value + from.Y, floor.MarkX.Value + to.X, floor.MarkY.Value + to.Y))
            {
                return obstacle.Name;
            }
        }

        return posts.FirstOrDefault(p => IsNear(new Place(p.X, p.Y), Camera.Around.Value + clearance, from, to))?.Text;
    }

    /// <summary>A straight way between two places comes nearer to a third than it must, or than either end is.</summary>
    internal static bool IsNear(Place middle, double radius, Place from, Place to) =>
        middle.ToLine(from, to) < Math.Min(radius, Math.Min(middle.To(from), middle.To(to))) - 1e-6;

    /// <summary>Places at the corners of everything that stands on the floor, at which a way round it may turn.</summary>
    public IEnumerable<Place> Corners() =>
        floor.Obstacles.SelectMany(o => new[]
        {
            At(o.X.Value - clearance, o.Y.Value - clearance),
            At(o.X.Value - clearance, o.Y.Value + o.Depth.Value + clearance),
            At(o.X.Value + o.Width.Value + clearance, o.Y.Value - clearance),
            At(o.X.Value + o.Width.Value + clearance, o.Y.Value + o.Depth.Value + clearance),
        })
        .Concat(posts.SelectMany(p => Round(new Place(p.X, p.Y), Camera.Around.Value + clearance)))
        .Where(Holds);

    /// <summary>Twelve places round a disc, so far out that a straight way from one to the next leaves it alone.</summary>
    internal static IEnumerable<Place> Round(Place middle, double radius) =>
        Enumerable.Range(0, Bearing.Circle / 2).Select(i => middle + Place.At(2 * i, (radius + 1) / FloorGeometry.Cosine(1)));

    private Place At(int x, int y) => new(x - floor.MarkX.Value, y - floor.MarkY.Value);

    /// <summary>How far a place is from an obstacle, the longer of across and along; 0 inside it.</summary>
    private double Away(Obstacle obstacle, Place place) => obstacle.Away(floor.MarkX.Value + place.X, floor.MarkY.Value + place.Y);

    private double ToEdge(double dx, double dy, int kept) =>
        Math.Min(ToWall(dx, floor.MarkX.Value, floor.Width.Value, kept), ToWall(dy, floor.MarkY.Value, floor.Depth.Value, kept));

    private static double ToWall(double step, int mark, int size, int kept)
    {
        if (Math.Abs(step) < 1e-9)
        {
            return double.MaxValue;
        }

        return step > 0 ? (size - kept - mark) / step : (mark - kept) / -step;
    }

    /// <summary>Distance along the ray from the mark to the obstacle grown by the clearance; unlimited when the ray passes it by.</summary>
    private double ToObstacle(double dx, double dy, Obstacle obstacle)
    {
        var (enterX, leaveX) = StraightWay.Slab(dx, obstacle.X.Value - clearance - floor.MarkX.Value, obstacle.X.Value + obstacle.Width.Value + clearance - floor.MarkX.Value);
        var (enterY, leaveY) = StraightWay.Slab(dy, obstacle.Y.Value - clearance - floor.MarkY.Value, obstacle.Y.Value + obstacle.Depth.Value + clearance - floor.MarkY.Value);
        var enter = Math.Max(enterX, enterY);
        var leave = Math.Min(leaveX, leaveY);
        return enter <= leave && leave >= 0 ? Math.Max(0, enter) : double.MaxValue;
    }
}

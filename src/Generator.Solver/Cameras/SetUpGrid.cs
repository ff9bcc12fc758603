using Generator.Domain;
using Generator.Rules.Sight;

namespace Generator.Solver.Cameras;

/// <summary>The set-ups among which the plan chooses: every half hour, each whole metre from 3 to 15 m that lies off the floor, three heights.</summary>
public static class SetUpGrid
{
    private static readonly int[] Heights = [150, 100, 200];

    /// <summary>From the mark, in centimetres.</summary>
    private const int Nearest = 300;

    private const int Farthest = 1500;

    public static IReadOnlyList<SetUp> Of(FloorPlan floor) =>
    [
        .. from distance in Enumerable.Range(Nearest / 100, ((Farthest - Nearest) / 100) + 1)
           from height in Heights
           from bearing in Enumerable.Range(0, Bearing.Circle)
           where !IsOn(floor, bearing, distance * 100)
           select new SetUp(new Bearing(bearing), new Centimetres(distance * 100), new Centimetres(height)),
    ];

    private static bool IsOn(FloorPlan floor, int bearing, int distance)
    {
        var (dx, dy) = new Bearing(bearing).Direction;
        var (x, y) = (floor.MarkX.Value + (distance * dx), floor.MarkY.Value + (distance * dy));
        return x > 0 && y > 0 && x < floor.Width.Value && y < floor.Depth.Value;
    }
}

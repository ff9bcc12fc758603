using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Marking;

/// <summary>Where a mark may lie: on the floor, clear of its edge, of what stands on it, of cameras and of other marks.</summary>
internal static class MarkRule
{
    /// <summary>Two marks are no nearer to one another than this, in centimetres: nearer, a step of a technique does. Common practice, no source.</summary>
    public const int Apart = 50;

    /// <summary>Room for the hero round a mark, in centimetres. Common practice, no source.</summary>
    public const int Room = 30;

    /// <summary>A camera nearer than this stands where the hero does: the camera's own half width and the hero's, 25 cm.</summary>
    public static readonly Centimetres OnTheMark = Camera.Around + new Centimetres(25);

    /// <summary>What is wrong with a mark on a floor; null for nothing.</summary>
    public static (string What, string Maybe)? WhyNotA(HeroMark mark, FloorPlan floor)
    {
        var (x, y) = (mark.X.Value, mark.Y.Value);
        if (ToEdge(x, y, floor) < Room)
        {
            return ($"lies off the floor, or less than {new Centimetres(Room)} from its edge", "Maybe x and y are swapped, or the floor is larger.");
        }

        return floor.Obstacles.FirstOrDefault(o => o.Away(x, y) < Room) is { } thing
            ? ($"lies in the obstacle {FieldText.Quote(thing.Name)}, or less than {new Centimetres(Room)} from it", "Maybe put it beside it.")
            : null;
    }

    /// <summary>The camera on the ground that stands on a mark; null for none.</summary>
    /// <param name="mark">The mark.</param>
    /// <param name="cameras">All cameras.</param>
    /// <param name="floor">The floor, with the mark from which cameras are seen.</param>
    public static Camera? On(HeroMark mark, IReadOnlyList<Camera> cameras, FloorPlan floor) =>
        cameras.FirstOrDefault(c => c.IsOnTheGround && Stands(c, floor.MarkX.Value, floor.MarkY.Value) is var (x, y) && Math.Sqrt(Math.Pow(x - mark.X.Value, 2) + Math.Pow(y - mark.Y.Value, 2)) < OnTheMark.Value);

    /// <summary>Where a camera stands on the floor, seen from a mark.</summary>
    public static (double X, double Y) Stands(Camera camera, int markX, int markY)
    {
        var (dx, dy) = camera.Bearing.Direction;
        return (markX + (camera.Distance.Value * dx), markY + (camera.Distance.Value * dy));
    }

    /// <summary>Centimetres between two marks.</summary>
    public static double Between(HeroMark one, HeroMark other) => Math.Sqrt(Math.Pow(one.X.Value - other.X.Value, 2) + Math.Pow(one.Y.Value - other.Y.Value, 2));

    /// <summary>Centimetres from a place to the nearest side of the floor, square to it; below 0 beyond it.</summary>
    public static int ToEdge(int x, int y, FloorPlan floor) => Math.Min(Math.Min(x, floor.Width.Value - x), Math.Min(y, floor.Depth.Value - y));
}

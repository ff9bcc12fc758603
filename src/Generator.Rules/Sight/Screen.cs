using Generator.Domain;
using Generator.Rules.Bodies;

namespace Generator.Rules.Sight;

/// <summary>A thing of the floor that may stand between a hit and a lens, as an upright block. Lengths in metres, seen from the mark of the hit: x towards 3 o'clock, y towards 12.</summary>
/// <param name="Left">Least x.</param>
/// <param name="Right">Greatest x.</param>
/// <param name="Near">Least y.</param>
/// <param name="Far">Greatest y.</param>
/// <param name="Height">How high it is.</param>
public readonly record struct Screen(double Left, double Right, double Near, double Far, double Height)
{
    /// <summary>The things of the floor that are known to be so and so high, seen from a mark; of others nothing is said.</summary>
    public static IReadOnlyList<Screen> Of(Scene scene, Place mark)
    {
        var floor = scene.Brief.Floor;
        return [.. floor.Obstacles.Select(o => (Thing: o, Height: scene.Book.Things.HeightOf(o))).Where(o => o.Height is not null).Select(o => Of(o.Thing, o.Height!.Value, mark + new Place(floor.MarkX.Value, floor.MarkY.Value)))];
    }

    private static Screen Of(Obstacle thing, Centimetres height, Place mark)
    {
        var (x, y) = (thing.X.Value - mark.X, thing.Y.Value - mark.Y);
        return new Screen(x / 100, (x + thing.Width.Value) / 100, y / 100, (y + thing.Depth.Value) / 100, height.Value / 100.0);
    }

    /// <summary>The line of sight passes through it.</summary>
    /// <param name="face">Where the hit lands.</param>
    /// <param name="sight">From there to the lens.</param>
    internal bool Hides(Point face, Point sight)
    {
        var (from, to) = (0.0, 1.0);
        return Cut(face.X, sight.X, Left, Right, ref from, ref to) && Cut(face.Y, sight.Y, Near, Far, ref from, ref to) && Math.Min(face.Z + (from * sight.Z), face.Z + (to * sight.Z)) < Height;
    }

    /// <summary>Shortens a stretch of the line to what lies between two limits; false when nothing does.</summary>
    private static bool Cut(double start, double along, double least, double most, ref double from, ref double to)
    {
        if (along == 0)
        {
            return start > least && start < most;
        }

        var (one, other) = ((least - start) / along, (most - start) / along);
        (from, to) = (Math.Max(from, Math.Min(one, other)), Math.Min(to, Math.Max(one, other)));
        return from < to;
    }
}

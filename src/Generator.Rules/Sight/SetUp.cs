using Generator.Domain;

namespace Generator.Rules.Sight;

/// <summary>A place for a camera: seen from the mark.</summary>
/// <param name="Bearing">Where it stands.</param>
/// <param name="Distance">From the mark.</param>
/// <param name="Height">Of the lens.</param>
public readonly record struct SetUp(Bearing Bearing, Centimetres Distance, Centimetres Height)
{
    public static SetUp Of(Camera camera) => new(camera.Bearing, camera.Distance, camera.Height);

    /// <summary>The same place as seen from another mark.</summary>
    public SetUp SeenFrom(Bodies.Place mark)
    {
        if (mark == default)
        {
            return this;
        }

        var (bearing, distance) = (Bodies.Place.At(Bearing.HalfHours, Distance.Value) - mark).Seen();
        return this with { Bearing = new Bearing(bearing), Distance = new Centimetres(distance) };
    }

    /// <summary>In metres: x towards 3 o'clock, y towards 12, z up, the mark at 0.</summary>
    internal Point Place => Point.Of(Bearing.HalfHours, Distance.Value, Height.Value / 100.0);
}

using Generator.Domain;
using Generator.Rules.Bodies;

namespace Generator.Paperwork.Following;

/// <summary>A place on the floor in centimetres from the mark: <paramref name="X"/> grows towards 3 o'clock, <paramref name="Y"/> towards 12.</summary>
public readonly record struct Spot(double X, double Y)
{
    public static readonly Spot Mark = new(0, 0);

    /// <summary>The place on a bearing (half hours) at a distance from the mark.</summary>
    public static Spot At(double bearing, double distance)
    {
        var (sin, cos) = Math.SinCos(bearing * 2 * Math.PI / Bearing.Circle);
        return new Spot(Math.Round(distance * sin, 1) + 0.0, Math.Round(distance * cos, 1) + 0.0);
    }

    /// <summary>A place as the rules know it.</summary>
    public static Spot Of(Place place) => new(Math.Round(place.X, 1) + 0.0, Math.Round(place.Y, 1) + 0.0);

    public double To(Spot other) => Math.Sqrt(((X - other.X) * (X - other.X)) + ((Y - other.Y) * (Y - other.Y)));

    /// <summary>The point at a share of the way to another, 0 to 1.</summary>
    public Spot Towards(Spot other, double share) => new(X + ((other.X - X) * share), Y + ((other.Y - Y) * share));
}

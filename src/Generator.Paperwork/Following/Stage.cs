using Generator.Domain;
using Generator.Figures.Bodies;
using Generator.Rules.Bodies;
using Body = Generator.Figures.Bodies.Figure;

namespace Generator.Paperwork.Following;

/// <summary>From the floor plan into space: metres, X towards 3 o'clock, Y up, Z towards 6, the hero's mark in the middle.</summary>
internal static class Stage
{
    /// <summary>Camera lenses are not in a brief: they are taken to see so much from top to bottom; degrees. Common practice, no source.</summary>
    public const double Lens = 35;

    /// <summary>Cameras look so high above the mark; metres.</summary>
    public const double Chest = 1.2;

    /// <summary>How high an obstacle is where neither the brief nor its kind says; metres. Common practice, no source.</summary>
    private const double UsualHeight = 0.9;

    private const double Metre = 100;

    /// <summary>Farther apart than this they are in different places; metres.</summary>
    private const double Same = 1e-6;

    public static Vec Of(Place place, double height = 0) => new(place.X / Metre, height, -place.Y / Metre);

    /// <summary>Where a lens is.</summary>
    public static Vec Of(Bearing bearing, Centimetres distance, Centimetres height) => Of(Place.At(bearing.HalfHours, distance.Value), height.Value / Metre);

    /// <summary>Metres.</summary>
    public static double HeightOf(ThingTable things, Obstacle thing) => things.HeightOf(thing) is { } high ? (double)high.Metres : UsualHeight;

    /// <summary>Degrees by which a figure that looks along Z is turned to its left so that it looks from one place to another.</summary>
    public static double Towards(Vec from, Vec to) => Math.Atan2(to.X - from.X, to.Z - from.Z) * 180 / Math.PI;

    /// <summary>Degrees by which it is turned for a facing clockwise from 12.</summary>
    public static double Facing(double degrees) => 180 - degrees;

    /// <summary>A figure with its hips over a place, turned to its left.</summary>
    public static Body Standing(Body figure, Vec at, double turned)
    {
        var moved = figure.TurnedLeft(turned);
        return moved.Moved(at - moved[Joint.Hips].Level);
    }

    /// <summary>A figure that lies along a body on the floor, the middle of both in one place.</summary>
    public static Body Lying(Body figure, LyingBody body)
    {
        var (feet, head) = (Of(body.Feet), Of(body.Head));
        var own = Ends(figure);
        var moved = figure.TurnedLeft(Towards(feet, head) - Towards(own.Feet, own.Head));
        var turned = Ends(moved);
        return moved.Moved(((feet + head) * 0.5) - ((turned.Feet + turned.Head) * 0.5));
    }

    public static bool IsSame(Body one, Body other) => Enum.GetValues<Joint>().All(j => one[j].To(other[j]) < Same);

    private static (Vec Feet, Vec Head) Ends(Body figure) => (((figure[Joint.LeftAnkle] + figure[Joint.RightAnkle]) * 0.5).Level, figure[Joint.Crown].Level);
}

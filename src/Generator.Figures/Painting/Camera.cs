using Generator.Domain;
using Generator.Figures.Bodies;

namespace Generator.Figures.Painting;

/// <summary>A camera far off beside the line between two bodies, a little before whoever does it and a little above.</summary>
/// <param name="From">The side of whoever does it from which it looks; from the other side the picture is the same in a mirror.</param>
/// <param name="Round">Degrees by which everything is turned to the left of whoever does it before it is looked at, away from the camera.</param>
internal readonly record struct Camera(Side From, double Round = 0) : IEye
{
    private static readonly (double Sin, double Cos) Before = Math.SinCos(20 * Math.PI / 180);

    private static readonly (double Sin, double Cos) Above = Math.SinCos(6 * Math.PI / 180);

    /// <inheritdoc/>
    public Seen See(Vec point)
    {
        var side = From == Side.Right ? 1 : -1;
        point = Round == 0 ? point : Turned.Leftwards(Round * side) * point;
        var aside = point.X * side;
        var along = (point.Z * Before.Cos) + (aside * Before.Sin);
        var away = (aside * Before.Cos) - (point.Z * Before.Sin);
        return new Seen(along * side, -((point.Y * Above.Cos) + (away * Above.Sin)), (away * Above.Cos) - (point.Y * Above.Sin));
    }
}

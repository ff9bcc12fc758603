using Generator.Domain;
using Generator.Figures.Bodies;

namespace Generator.Figures.Painting;

/// <summary>A camera far off beside the line between two bodies, a little before whoever does it and a little above.</summary>
/// <param name="From">The side of whoever does it from which it looks; from the other side the picture is the same in a mirror.</param>
internal readonly record struct Camera(Side From) : IEye
{
    private static readonly (double Sin, double Cos) Round = Math.SinCos(20 * Math.PI / 180);

    private static readonly (double Sin, double Cos) Above = Math.SinCos(6 * Math.PI / 180);

    /// <inheritdoc/>
    public Seen See(Vec point)
    {
        var side = From == Side.Right ? 1 : -1;
        var aside = point.X * side;
        var along = (point.Z * Round.Cos) + (aside * Round.Sin);
        var away = (aside * Round.Cos) - (point.Z * Round.Sin);
        return new Seen(along * side, -((point.Y * Above.Cos) + (away * Above.Sin)), (away * Above.Cos) - (point.Y * Above.Sin));
    }
}

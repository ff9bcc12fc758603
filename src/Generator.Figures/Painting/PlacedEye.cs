using Generator.Figures.Bodies;

namespace Generator.Figures.Painting;

/// <summary>Looks from one place at another, so far off that what is farther away is no smaller.</summary>
internal sealed class PlacedEye : IEye
{
    private readonly Vec at;
    private readonly Vec ahead;
    private readonly Vec right;
    private readonly (double Sin, double Cos) down;

    public PlacedEye(Vec from, Vec at)
    {
        this.at = at;
        var way = at - from;
        ahead = way.Level.Length < 1e-6 ? Vec.Ahead : way.Level.Unit;
        right = ahead.Cross(Vec.Up);
        down = Math.SinCos(Math.Atan2(-way.Y, way.Level.Length));
    }

    public Seen See(Vec point)
    {
        var way = point - at.Level;
        var (aside, off) = (way.Dot(right), way.Dot(ahead));
        return new Seen(aside, -((point.Y * down.Cos) + (off * down.Sin)), (off * down.Cos) - (point.Y * down.Sin));
    }
}

using Generator.Domain;

namespace Generator.Rules;

/// <summary>
/// Distances between people on the floor, in whole centimetres. Both distances from the mark are first rounded to the nearest 10 cm:
/// nobody hits a mark more exactly, and rules and solver then share one small table.
/// </summary>
public static class FloorGeometry
{
    /// <summary>
    /// A way starts this far from the mark and is never shorter: nearer in it is the hero who gets out of it. So a longer way is never clearer.
    /// </summary>
    public const int WayStart = 60;

    private static readonly double[] Cosines = [.. Enumerable.Range(0, Bearing.Circle + 1).Select(Cosine)];

    /// <summary>The nearest multiple of 10 cm, halves up; for distances of 0 and more.</summary>
    public static int Round10(int distance) => (distance + 5) / 10 * 10;

    /// <summary>Distance between two people.</summary>
    /// <param name="delta">How far apart their bearings lie, 0 to 24 half hours.</param>
    /// <param name="first">Distance of the first from the mark.</param>
    /// <param name="second">Distance of the second from the mark.</param>
    public static int Apart(int delta, int first, int second) => Between(Round10(first), Round10(second), Cosines[delta]);

    /// <summary>Distance between somebody standing and the way on which another is sent straight out from the mark.</summary>
    /// <param name="delta">How far the one standing is round the clock from the way, 0 to 24 half hours.</param>
    /// <param name="other">Distance of the one standing from the mark.</param>
    /// <param name="landing">Distance at which the way ends.</param>
    public static int LaneDistance(int delta, int other, int landing)
    {
        var cosine = Cosines[delta];
        var stands = Round10(other);
        var end = Math.Max(WayStart, Round10(landing));
        return Between(stands, Math.Clamp(stands * cosine, WayStart, end), cosine);
    }

    private static int Between(double first, double second, double cosine) =>
        (int)Math.Round(Math.Sqrt(Math.Max(0, (first * first) + (second * second) - (2 * first * second * cosine))), MidpointRounding.AwayFromZero);

    /// <summary>Cosine of a number of half hours, from square roots alone so that it is the same bit for bit on every machine.</summary>
    private static double Cosine(int halfHours)
    {
        var folded = halfHours > 12 ? 24 - halfHours : halfHours;
        var (sign, acute) = folded > 6 ? (-1, 12 - folded) : (1, folded);
        return sign * acute switch
        {
            0 => 1,
            1 => (Math.Sqrt(6) + Math.Sqrt(2)) / 4,
            2 => Math.Sqrt(3) / 2,
            3 => Math.Sqrt(2) / 2,
            4 => 0.5,
            5 => (Math.Sqrt(6) - Math.Sqrt(2)) / 4,
            _ => 0,
        };
    }
}

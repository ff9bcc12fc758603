using Generator.Domain;

namespace Generator.Rules;

/// <summary>Distances between people on the floor, to the whole centimetre.</summary>
public static class FloorGeometry
{
    private static readonly double[] Cosines = [.. Enumerable.Range(0, Bearing.Circle).Select(Exact)];

    /// <summary>Cosine of a number of half hours, any whole number.</summary>
    public static double Cosine(int halfHours) => Cosines[new Bearing(halfHours).HalfHours];

    /// <summary>Sine of a number of half hours, 0 to 23.</summary>
    internal static double Sine(int halfHours) => Cosines[halfHours < 6 ? halfHours + 18 : halfHours - 6];

    /// <summary>The nearest whole number of centimetres, halves up, whichever way round the clock the same distance was worked out.</summary>
    public static int Whole(double distance) => distance > int.MaxValue ? int.MaxValue : (int)Math.Floor(distance + 0.5 + 1e-7);

    /// <summary>Distance between two people.</summary>
    /// <param name="delta">How far apart their bearings lie, 0 to 24 half hours.</param>
    /// <param name="first">Distance of the first from the mark.</param>
    /// <param name="second">Distance of the second from the mark.</param>
    public static int Apart(int delta, int first, int second) =>
        Whole(Math.Sqrt(Math.Max(0, ((double)first * first) + ((double)second * second) - (2.0 * first * second * Cosine(delta)))));

    /// <summary>From square roots alone, so that it is the same bit for bit on every machine.</summary>
    private static double Exact(int halfHours)
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

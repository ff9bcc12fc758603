using System.Globalization;

namespace Generator.Benchmarks.Measuring;

/// <summary>Median of some figures, with least, greatest and the quartiles between (by linear interpolation).</summary>
internal sealed record Quartiles(int Count, double Least, double Lower, double Median, double Upper, double Greatest)
{
    /// <summary>Null for no figures at all.</summary>
    public static Quartiles? Of(IEnumerable<double?> figures)
    {
        var sorted = figures.OfType<double>().Order().ToArray();
        return sorted.Length == 0 ? null : new Quartiles(sorted.Length, sorted[0], At(sorted, 0.25), At(sorted, 0.5), At(sorted, 0.75), sorted[^1]);
    }

    /// <summary>"**71** (40 [52–73] 75)": median, least, quartiles, greatest.</summary>
    public string ToText(string format)
    {
        string F(double d) => d.ToString(format, CultureInfo.InvariantCulture);
        return $"**{F(Median)}** ({F(Least)} [{F(Lower)}–{F(Upper)}] {F(Greatest)})";
    }

    private static double At(double[] sorted, double share)
    {
        var place = share * (sorted.Length - 1);
        var below = (int)place;
        return below + 1 < sorted.Length ? sorted[below] + ((place - below) * (sorted[below + 1] - sorted[below])) : sorted[below];
    }
}

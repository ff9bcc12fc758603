using System.Globalization;

namespace Generator.Benchmarks.Drafts;

/// <summary>Least, median and greatest of some figures.</summary>
internal sealed record Spread(double Least, double Median, double Greatest)
{
    /// <summary>Null for no figures at all.</summary>
    public static Spread? Of(IEnumerable<double> figures)
    {
        var sorted = figures.Order().ToArray();
        if (sorted.Length == 0)
        {
            return null;
        }

        var middle = sorted.Length / 2;
        var median = sorted.Length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
        return new Spread(sorted[0], median, sorted[^1]);
    }

    /// <summary>"71 (40–75)".</summary>
    public string ToText(string format) =>
        $"{Median.ToString(format, CultureInfo.InvariantCulture)} ({Least.ToString(format, CultureInfo.InvariantCulture)}–{Greatest.ToString(format, CultureInfo.InvariantCulture)})";
}

using System.Globalization;

namespace Generator.Paperwork.Floor;

/// <summary>Numbers and paths as SVG writes them: a tenth of a unit, a point for the decimals, never "-0".</summary>
public static class Svg
{
    public static string Number(double value) => (Math.Round(value, 1, MidpointRounding.AwayFromZero) + 0.0).ToString("0.#", CultureInfo.InvariantCulture) is var text && text == "-0" ? "0" : text;

    /// <summary>A line through the points.</summary>
    public static string Line(IEnumerable<Point> points) => "M" + string.Join('L', points);

    public static string Move(Point point) => $"translate({point})";

    public static string Move(Point point, double degrees) => $"translate({point}) rotate({Number(degrees)})";
}

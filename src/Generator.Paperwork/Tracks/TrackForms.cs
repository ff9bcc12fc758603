using System.Globalization;
using Generator.Paperwork.Following;

namespace Generator.Paperwork.Tracks;

/// <summary>
/// How each doing is drawn on a track: a form of its own, filled with more of the performer's colour the more force it has, so that it is told without the colour as well. A row is
/// 24 units high.
/// </summary>
public static class TrackForms
{
    private const double Top = 2, Centre = 12, Bottom = 22, Tip = 6, Under = 26.5;

    /// <summary>The outline as a path.</summary>
    /// <param name="doing">What it is.</param>
    /// <param name="x">Left edge.</param>
    /// <param name="width">Its length.</param>
    public static string Of(Doing doing, double x, double width)
    {
        var (right, tip) = (x + width, Math.Min(Tip, width / 2));
        return doing switch
        {
            Doing.NotIn or Doing.Between or Doing.Ready => Path($"M{x},{Centre}H{right}"),
            Doing.Out => Path($"M{x},{Centre}H{right}M{x},{Centre - 5}L{x + 10},{Centre + 5}M{x},{Centre + 5}L{x + 10},{Centre - 5}"),
            Doing.Waiting => Box(x, width, Top + 2, Bottom - 2, 0),
            Doing.Enters or Doing.ComesIn => Path($"M{x},{Top + 3}H{right - tip}L{right},{Centre}L{right - tip},{Bottom - 3}H{x}L{x + tip},{Centre}Z"),
            Doing.Attack => Path($"M{x},{Centre}L{right},{Top}V{Bottom}Z"),
            Doing.Fall => Path($"M{x},{Top}L{right},{Bottom}H{x}Z"),
            Doing.Reset => Box(x, width, 14, Bottom, 0),
            Doing.Held or Doing.Grips or Doing.Grapples => Box(x, width, Top, Bottom, 9),
            Doing.Finishes => Path($"M{x},{Top}H{right - tip}L{right},{Centre}L{right - tip},{Bottom}H{x}Z"),
            _ => Box(x, width, Top, Bottom, 1),
        };
    }

    /// <summary>How it is filled: "full", "half", "light", "empty", or a "line".</summary>
    public static string Look(Doing doing) => doing switch
    {
        Doing.NotIn or Doing.Between or Doing.Ready or Doing.Out => "line",
        Doing.Attack or Doing.Fall or Doing.Hits or Doing.Finishes => "full",
        Doing.Grips or Doing.Grapples or Doing.ComesIn => "half",
        Doing.Reaction or Doing.Held or Doing.Reset or Doing.Setback => "light",
        _ => "empty",
    };

    /// <summary>Middle of the words in it, from its left edge: in the broad end of a wedge.</summary>
    public static double Middle(Doing doing, double width) => doing switch
    {
        Doing.Attack => width * 0.62,
        Doing.Fall => width * 0.34,
        Doing.Finishes => (width - 3) / 2,
        _ => width / 2,
    };

    /// <summary>Base line of the words in it.</summary>
    public static double BaseLine(Doing doing) => doing switch
    {
        Doing.Fall => 20.5,
        Doing.Reset => 12,
        Doing.Ready or Doing.NotIn => 9,
        _ => 16.5,
    };

    /// <summary>Room for words in a form so long.</summary>
    public static double Room(Doing doing, double width) => doing switch
    {
        Doing.Attack or Doing.Fall => width * 0.62,
        Doing.Enters or Doing.ComesIn => width - (2 * Tip),
        _ => width - 4,
    };

    /// <summary>A jagged line under a track.</summary>
    /// <param name="x">Left end.</param>
    /// <param name="width">Its length.</param>
    public static string Jagged(double x, double width)
    {
        const double Tooth = 3.5;
        var teeth = Math.Max(1, (int)(width / Tooth));
        return Path($"M{x},{Under}") + string.Concat(Enumerable.Range(1, teeth).Select(i => Path($"L{x + (i * width / teeth)},{(i % 2 == 0 ? Under : Under - 3)}")));
    }

    private static string Box(double x, double width, double top, double bottom, double round)
    {
        var r = Math.Min(round, width / 2);
        return r == 0
            ? Path($"M{x},{top}h{width}V{bottom}h{-width}Z")
            : Path($"M{x + r},{top}h{width - (2 * r)}a{r},{r} 0 0 1 {r},{r}V{bottom - r}a{r},{r} 0 0 1 {-r},{r}h{(2 * r) - width}a{r},{r} 0 0 1 {-r},{-r}V{top + r}a{r},{r} 0 0 1 {r},{-r}Z");
    }

    private static string Path(FormattableString path) => string.Format(CultureInfo.InvariantCulture, path.Format, [.. path.GetArguments().Select(a => (object?)Math.Round(Convert.ToDouble(a, CultureInfo.InvariantCulture), 1))]);
}

using Generator.Domain;
using Generator.Paperwork.Text;
using Generator.Rules.Shapes;

namespace Generator.Paperwork.Shaping;

/// <summary>Values and bands of figures in words and numbers; half counts are told as counts.</summary>
internal static class FigureWords
{
    /// <summary>"3 moves", "42 %", "2.5 counts"; "nothing to judge" where there is none.</summary>
    public static string Value(Figure figure) => figure.Value switch
    {
        null => "nothing to judge",
        1 when InCounts(figure) => "half a count",
        { } value => $"{Number(figure, value)} {Unit(figure, value)}",
    };

    /// <summary>"at least 2", "at most 40", "3 to 5".</summary>
    public static string Band(Figure figure) => (figure.Least, figure.Most) switch
    {
        ({ } least, { } most) => $"{Number(figure, least)} to {Number(figure, most)}",
        ({ } least, null) => "at least " + Number(figure, least),
        (null, { } most) => "at most " + Number(figure, most),
        _ => "anything",
    };

    /// <summary>The number as it is printed: in counts where it is kept in half counts.</summary>
    public static decimal Told(Figure figure, int value) => InCounts(figure) ? value / (decimal)HalfCounts.PerCount : value;

    public static string Unit(Figure figure) => InCounts(figure) ? "counts" : figure.Unit;

    private static bool InCounts(Figure figure) => string.Equals(figure.Unit, "half counts", StringComparison.Ordinal);

    private static string Number(Figure figure, int value) => Words.Number(Told(figure, value));

    /// <summary>As said of one where it is one of something.</summary>
    private static string Unit(Figure figure, int value) => Unit(figure) is var unit && Told(figure, value) == 1 ? Amounts.One(unit) : unit;
}

using Generator.Domain;

namespace Generator.Paperwork.HandOffs;

/// <summary>A cell of a table for spreadsheets: a number, or text that stays text.</summary>
public readonly record struct Cell
{
    /// <summary>Nothing.</summary>
    public static readonly Cell Empty = Of(string.Empty);

    private Cell(decimal? value, string text, int decimals) => (Value, Text, Decimals) = (value, text, decimals);

    /// <summary>Null for text.</summary>
    public decimal? Value { get; }

    /// <summary>Empty for a number.</summary>
    public string Text { get; }

    /// <summary>Digits behind the point that a workbook shows of a number, so that a column lines up.</summary>
    public int Decimals { get; }

    public static Cell Number(decimal value, int decimals = 0) => new(value, string.Empty, decimals);

    /// <summary>A moment as a number that sorts and can be reckoned with: count 12 is 12, count 12&amp; is 12.5, the click before count 1 is 0.</summary>
    /// <param name="moment">Half counts from count 1.</param>
    public static Cell Count(int moment) => Number(((decimal)moment / HalfCounts.PerCount) + 1, 1);

    public static Cell Of(string text) => new(null, text, 0);
}

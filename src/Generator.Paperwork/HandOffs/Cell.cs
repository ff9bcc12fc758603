namespace Generator.Paperwork.HandOffs;

/// <summary>A cell of a table for spreadsheets: a number, or text that stays text.</summary>
public readonly record struct Cell
{
    private Cell(decimal? number, string text) => (Value, Text) = (number, text);

    /// <summary>Null for text.</summary>
    public decimal? Value { get; }

    /// <summary>Empty for a number.</summary>
    public string Text { get; }

    public static Cell Number(decimal value) => new(value, string.Empty);

    public static Cell Of(string text) => new(null, text);
}

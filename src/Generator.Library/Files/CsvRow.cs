using Generator.Library.Reading;

namespace Generator.Library.Files;

/// <summary>A row out of a CSV routine. A clock position may have become a time of day: spreadsheets write 2:30 back as 02:30:00.</summary>
internal sealed class CsvRow(string file, int line, IReadOnlyDictionary<string, string> cells, ProblemList problems) : RoutineRow
{
    public override int Line => line;

    public override string? Text(string field)
    {
        var text = cells.GetValueOrDefault(field) is { } cell ? CsvText.Unharmed(cell) : null;
        if (string.Equals(field, "note", StringComparison.Ordinal))
        {
            return text;
        }

        text = text?.Trim();
        return string.IsNullOrEmpty(text) ? null : field is "from" or OpeningColumns.Bearing ? Clock(text) : text;
    }

    /// <summary>A clock position that may have become a time of day.</summary>
    public static string Clock(string text) => text.Split(':') is [var hour, var half, "00"] ? $"{hour}:{half}" : text;

    protected override void Report(string field, string message, string maybe) =>
        problems.Add(new Problem(file, line, field, Text(field) is { } text ? FieldText.Quote(text) : string.Empty, message, maybe));
}

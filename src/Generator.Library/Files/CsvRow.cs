using Generator.Library.Reading;

namespace Generator.Library.Files;

/// <summary>A row out of a CSV routine.</summary>
internal sealed class CsvRow(string file, int line, IReadOnlyDictionary<string, string> cells, ProblemList problems) : RoutineRow
{
    public override string? Text(string field)
    {
        var text = cells.GetValueOrDefault(field);
        if (string.Equals(field, "note", StringComparison.Ordinal))
        {
            return text;
        }

        return string.IsNullOrWhiteSpace(text) ? null : text.Trim();
    }

    protected override void Report(string field, string message, string maybe) =>
        problems.Add(new Problem(file, line, field, Text(field) is { } text ? FieldText.Quote(text) : string.Empty, message, maybe));
}

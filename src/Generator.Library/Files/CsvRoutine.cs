using Generator.Library.Reading;

namespace Generator.Library.Files;

/// <summary>Reads the rows of a CSV routine by the names in its first line, in whatever order they stand.</summary>
internal static class CsvRoutine
{
    /// <param name="file">The file.</param>
    /// <param name="isOpen">Columns may be missing.</param>
    /// <param name="problems">Is told what is wrong.</param>
    public static IReadOnlyList<RoutineRow> Rows(SourceFile file, bool isOpen, ProblemList problems)
    {
        var lines = CsvText.Parse(file.Name, file.Text, problems);
        if (lines.Count == 0)
        {
            problems.Add(new Problem(file.Name, 0, string.Empty, string.Empty, "The file is empty.", "Maybe it was saved before anything was written."));
            return [];
        }

        var header = Header(file, lines[0].Line, lines[0].Cells, isOpen, problems);
        if (header.Count == 0)
        {
            return [];
        }

        var rows = new List<RoutineRow>();
        foreach (var (line, cells) in lines.Skip(1))
        {
            var named = new Dictionary<string, string>(StringComparer.Ordinal);
            for (var i = 0; i < cells.Count; i++)
            {
                if (i < header.Count)
                {
                    named[header[i]] = cells[i];
                }
                else if (!string.IsNullOrWhiteSpace(cells[i]))
                {
                    problems.Add(new Problem(
                        file.Name, line, string.Empty, FieldText.Quote(cells[i]), $"{FieldText.Quote(cells[i])} stands beyond the last column.", "Maybe a cell with a comma needs quotation marks round it."));
                }
            }

            rows.Add(new CsvRow(file.Name, line, named, problems));
        }

        return rows;
    }

    private static List<string> Header(SourceFile file, int line, IReadOnlyList<string> cells, bool isOpen, ProblemList problems)
    {
        if (!cells.Any(c => RoutineRow.Fields.Contains(c.Trim().ToLowerInvariant(), StringComparer.Ordinal)))
        {
            problems.Add(new Problem(
                file.Name, line, string.Empty, FieldText.Quote(cells[0]), "The first line does not name the columns.", $"Maybe this line is missing above it: {string.Join(",", RoutineTable.UsualFields)}"));
            return [];
        }

        var names = new List<string>();
        foreach (var cell in cells.Select(c => c.Trim()))
        {
            var name = cell.ToLowerInvariant();
            if (name.Length > 0 && name != RoutineTable.Warning && !RoutineTable.Columns.Contains(name, StringComparer.Ordinal))
            {
                problems.Add(new Problem(
                    file.Name,
                    line,
                    string.Empty,
                    FieldText.Quote(cell),
                    $"There is no column {FieldText.Quote(cell)}.",
                    NearestWords.Maybe(name, RoutineTable.Columns, NearestWords.OneOf(RoutineTable.Columns))));
            }
            else if (name.Length > 0 && names.Contains(name, StringComparer.Ordinal))
            {
                problems.Add(new Problem(file.Name, line, string.Empty, FieldText.Quote(cell), $"The column {name} is there twice.", "Maybe one of the two can go."));
            }

            names.Add(name);
        }

        foreach (var needed in isOpen ? [] : (ReadOnlySpan<string>)["count", "technique"])
        {
            if (!names.Contains(needed, StringComparer.Ordinal))
            {
                problems.Add(new Problem(
                    file.Name, line, needed, string.Empty, $"The column {needed} is missing.", "Maybe it goes by another name in this file."));
            }
        }

        return names;
    }
}

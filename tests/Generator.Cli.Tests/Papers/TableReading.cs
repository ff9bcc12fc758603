using System.Globalization;
using System.Text;
using CsvHelper;

namespace Generator.Cli.Tests.Papers;

/// <summary>Reads tables with CsvHelper.</summary>
internal static class TableReading
{
    /// <summary>What a table says.</summary>
    /// <param name="paper">File name.</param>
    /// <param name="rows">The headings, then the rows.</param>
    /// <param name="cast">Names, the hero first.</param>
    public static IEnumerable<Fact> Of(string paper, IReadOnlyList<IReadOnlyList<string>> rows, IReadOnlyList<string> cast)
    {
        string At(IReadOnlyList<string> row, string column) => rows[0].ToList().IndexOf(column) is >= 0 and var i && i < row.Count ? row[i] : string.Empty;
        var facts = new List<Fact>();
        foreach (var row in rows.Skip(1).Where(r => At(r, "second").Length > 0))
        {
            facts.AddRange(TextReading.Head(TextReading.Flat(At(row, "version") + " " + At(row, "warning"))));
            if (Frame(At(row, "second")) is { } frame)
            {
                var comes = rows[0].Contains("performer") && At(row, "count") == At(row, "to count");
                facts.Add(new Fact(string.Empty, comes ? "frame that comes" : "frame that begins", At(row, "called"), frame));
            }

            if (rows[0].Contains("performer"))
            {
                if (Harmless(At(row, "performer")) == cast[0] && !At(row, "does").StartsWith("plays a hurt ", StringComparison.Ordinal))
                {
                    facts.Add(new Fact(string.Empty, "technique", At(row, "move"), At(row, "does")));
                    facts.Add(new Fact(string.Empty, "count of a move", At(row, "move"), At(row, "called")));
                }

                continue;
            }

            var move = At(row, "move");
            facts.Add(new Fact(string.Empty, "count of a move", move, At(row, "called")));
            facts.Add(new Fact(string.Empty, "second", move, At(row, "second")));
            facts.Add(new Fact(string.Empty, "who", move, Harmless(At(row, "attacker")) is { Length: > 0 } who && At(row, "attacker at").Length > 0 ? who : "nobody"));
            facts.Add(new Fact(string.Empty, "attack", move, At(row, "attack")));
            facts.Add(new Fact(string.Empty, "technique", move, At(row, "technique") is { Length: > 0 } technique ? technique : "nothing answers it"));
            facts.Add(new Fact(string.Empty, "reaction", move, At(row, "reaction")));
            var falls = $", {Harmless(At(row, "falls"))}, ";
            facts.AddRange(cast.Where(n => falls.Contains($", {n}, ", StringComparison.Ordinal)).Select(n => new Fact(string.Empty, "fall", $"{move} {n}", "a fall")));
        }

        if (rows[0].Contains("phrase"))
        {
            var phrases = rows.Skip(1).Select(r => At(r, "phrase")).Where(p => p.Length > 0).Distinct().Count();
            facts.Add(new Fact(string.Empty, "number of phrases", "all", phrases.ToString(CultureInfo.InvariantCulture)));
        }

        return facts.Select(f => f with { Paper = paper });
    }

    public static IReadOnlyList<IReadOnlyList<string>> Csv(byte[] bytes)
    {
        using var stream = new MemoryStream(bytes);
        using var reader = CsvReader.Create(stream, new CsvReaderOptions { HasHeader = false });
        var rows = new List<IReadOnlyList<string>>();
        while (reader.Read())
        {
            rows.Add([.. Enumerable.Range(0, reader.FieldCount).Select(reader.GetString)]);
        }

        return rows;
    }

    /// <summary>The days of a calendar, unfolded by hand.</summary>
    public static IEnumerable<Fact> Calendar(string text)
    {
        foreach (var entry in text.Replace("\r\n ", string.Empty, StringComparison.Ordinal).Split("BEGIN:VEVENT").Skip(1))
        {
            foreach (var fact in TextReading.Head(TextReading.Flat(entry.Replace("\\n", " ", StringComparison.Ordinal).Replace("\\,", ",", StringComparison.Ordinal).Replace("\\;", ";", StringComparison.Ordinal))))
            {
                yield return fact with { Paper = "rehearsals.ics" };
            }
        }
    }

    /// <summary>The frame of a moment given in thousandths of a second; null where that is too coarse to tell which of two.</summary>
    private static string? Frame(string second)
    {
        var frames = decimal.Parse(second, CultureInfo.InvariantCulture) * 25;
        return Math.Abs(frames - Math.Floor(frames) - 0.5m) < 0.02m ? null : Math.Round(frames).ToString(CultureInfo.InvariantCulture);
    }

    private static string Harmless(string text) => text.StartsWith('\'') && text.Length > 1 && "=+-@'".Contains(text[1], StringComparison.Ordinal) ? text[1..] : text;
}

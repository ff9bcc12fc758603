namespace Generator.Library.Files.Notes;

/// <summary>One line of notes, told apart by its form.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Name">Name before the colon, without "from …"; empty where there is none.</param>
/// <param name="From">What stands after "from" behind the name; null where nothing does.</param>
/// <param name="Rest">What follows the colon, or the whole line.</param>
/// <param name="Column">Column of <paramref name="Rest"/>, from 1.</param>
internal sealed record NotesLine(int Number, NotesLineKind Kind, string Name, string? From, string Rest, int Column)
{
    /// <summary>Every line that is not empty.</summary>
    public static IReadOnlyList<NotesLine> All(string text) =>
        [.. text.TrimStart('\uFEFF').ReplaceLineEndings("\n").Split('\n').Select((line, i) => (line, i + 1)).Where(l => l.line.Trim().Length > 0).Select(l => Of(l.line, l.Item2))];

    /// <summary>The first line that is neither empty nor a remark has a colon behind a name, or is a gap.</summary>
    public static bool LooksLikeNotes(string text)
    {
        var first = text.TrimStart('\uFEFF').ReplaceLineEndings("\n").Split('\n').Select(l => l.Trim()).FirstOrDefault(l => l.Length > 0 && l[0] != '#');
        return first is not null && first[0] is not ('{' or '[' or '/') && (first.Contains(':', StringComparison.Ordinal) || first.StartsWith("...", StringComparison.Ordinal) || first[0] == '…');
    }

    private static NotesLine Of(string line, int number)
    {
        var start = line.Length - line.TrimStart().Length;
        var whole = line.Trim();
        if (whole[0] == '#')
        {
            return new NotesLine(number, NotesLineKind.Remark, string.Empty, null, whole[1..].Trim(), start + 1);
        }

        if (whole.StartsWith("...", StringComparison.Ordinal) || whole[0] == '…')
        {
            return new NotesLine(number, NotesLineKind.Gap, string.Empty, null, whole.TrimStart('.', '…').Trim(), start + 1);
        }

        // A colon inside "2:30" stands between figures and is none of ours.
        var colon = Enumerable.Range(0, line.Length).FirstOrDefault(i => line[i] == ':' && !(i > 0 && char.IsAsciiDigit(line[i - 1]) && i + 1 < line.Length && char.IsAsciiDigit(line[i + 1])), -1);
        if (colon < 0)
        {
            return new NotesLine(number, NotesLineKind.Beat, string.Empty, null, whole, start + 1);
        }

        var head = line[..colon].Trim();
        var from = head.IndexOf(" from ", StringComparison.OrdinalIgnoreCase);
        var (name, place) = from < 0 ? (head, (string?)null) : (head[..from].Trim(), head[(from + 6)..].Trim());
        var rest = line[(colon + 1)..];
        var column = colon + 2 + (rest.Length - rest.TrimStart().Length);
        var kind = !rest.Contains('>', StringComparison.Ordinal) && CastWords.Parse(rest.Trim()) is not null ? NotesLineKind.Person : NotesLineKind.Moves;
        return new NotesLine(number, kind, name, place, rest.Trim(), column);
    }
}

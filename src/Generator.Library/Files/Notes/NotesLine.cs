using System.Text.RegularExpressions;
using Generator.Domain;

namespace Generator.Library.Files.Notes;

/// <summary>One line of notes, told apart by its form.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Name">Name before the colon, without "from …"; empty where there is none.</param>
/// <param name="From">What stands after "from" behind the name; null where nothing does.</param>
/// <param name="Rest">What follows the colon, or the whole line; without a remark at its end.</param>
internal sealed partial record NotesLine(int Number, NotesLineKind Kind, string Name, NotesPart? From, NotesPart Rest)
{
    /// <summary>The ally does what stands right of the arrow: their name stands before that of the attacker.</summary>
    public bool ByAlly { get; init; }

    /// <summary>Every line that is not empty.</summary>
    public static IReadOnlyList<NotesLine> All(string text, PropTable props) =>
        [.. Lines(text).Select((line, i) => (line, i + 1)).Where(l => l.line.Trim().Length > 0).Select(l => Of(l.line, l.Item2, props))];

    /// <summary>The first line that is neither empty nor a remark has a colon behind a name, or is a gap.</summary>
    public static bool LooksLikeNotes(string text)
    {
        var first = Lines(text).Select(l => l.Trim()).FirstOrDefault(l => l.Length > 0 && l[0] != '#');
        return first is not null && first[0] is not ('{' or '[' or '/') && (Colon(first) >= 0 || first.StartsWith("...", StringComparison.Ordinal) || first[0] == '…');
    }

    /// <summary>What stands between the arrows; one piece where there is none.</summary>
    public IReadOnlyList<NotesPart> AtArrows()
    {
        var parts = new List<NotesPart>();
        var start = 0;
        foreach (var arrow in Arrow().EnumerateMatches(Rest.Text))
        {
            parts.Add(NotesPart.Of(Rest.Text, Rest.Column, start, arrow.Index));
            start = arrow.Index + arrow.Length;
        }

        return [.. parts, NotesPart.Of(Rest.Text, Rest.Column, start, Rest.Text.Length)];
    }

    /// <summary>A line that begins with the ally's name as the rest of it says: "Mira: Bruno: swing > duck"; any other as it is.</summary>
    public NotesLine For(string? ally) => Kind == NotesLineKind.Moves && string.Equals(Name, ally, StringComparison.OrdinalIgnoreCase) && !Rest.IsEmpty
        ? Of(new string(' ', Rest.Column - 1) + Rest.Text, Number, PropTable.Empty) with { ByAlly = true }
        : this;

    private static string[] Lines(string text) => text.TrimStart('\uFEFF').ReplaceLineEndings("\n").Split('\n');

    private static NotesLine Of(string line, int number, PropTable props)
    {
        var whole = NotesPart.Of(line, 1, 0, line.Length);
        if (whole.Text[0] == '#')
        {
            return new NotesLine(number, NotesLineKind.Remark, string.Empty, null, NotesPart.Of(line, 1, line.IndexOf('#', StringComparison.Ordinal) + 1, line.Length));
        }

        var end = Remark().Match(line) is { Success: true } remark ? remark.Index : line.Length;
        whole = NotesPart.Of(line, 1, 0, end);
        if (whole.Text.StartsWith("..", StringComparison.Ordinal) || whole.Text[0] == '…')
        {
            return new NotesLine(number, NotesLineKind.Gap, string.Empty, null, NotesPart.Of(line, 1, Dots().Match(line).Length, end));
        }

        var colon = Colon(line);
        if (colon < 0 || colon >= end)
        {
            return new NotesLine(number, NotesLineKind.Beat, string.Empty, null, whole);
        }

        var head = line[..colon];
        var from = head.IndexOf(" from ", StringComparison.OrdinalIgnoreCase);
        var rest = NotesPart.Of(line, 1, colon + 1, end);
        var name = Bullet().Replace(from < 0 ? head : head[..from], string.Empty).Trim().Trim(Quotes);
        if (string.Equals(name, Ally.Word, StringComparison.OrdinalIgnoreCase) && AllyName().Match(rest.Text) is { Success: true } named)
        {
            // "Ally: Mira at 6, back to back" says what "Mira: the ally, at 6, back to back" does.
            (name, rest) = (named.Groups["name"].Value, rest with { Text = "the ally" + (named.Groups["rest"].Value is { Length: > 0 } more ? ", " + more : string.Empty) });
        }

        return new NotesLine(
            number,
            Arrow().IsMatch(rest.Text) ? NotesLineKind.Moves : FloorNotes.IsFloor(name) ? NotesLineKind.Floor : CastWords.IsAbout(rest, props) ? NotesLineKind.Person : NotesLineKind.Moves,
            name,
            from < 0 ? null : NotesPart.Of(line, 1, from + 6, colon),
            rest);
    }

    /// <summary>Place of the colon behind a name, −1 for none; one inside "2:30" stands between figures and is none of ours.</summary>
    private static int Colon(string line) => NameEnd().Match(line) is { Success: true } colon ? colon.Index : -1;

    private static readonly char[] Quotes = ['"', '\'', '“', '”', '„', '‘', '’', '«', '»'];

    [GeneratedRegex("(?<![0-9])[:：]|[:：](?![0-9])")]
    private static partial Regex NameEnd();

    [GeneratedRegex("[-=–—]*[>＞]|[→⇒➔➜➡]")]
    private static partial Regex Arrow();

    [GeneratedRegex(@"^\s*([-*•–]\s|[0-9]+[.)]\s)")]
    private static partial Regex Bullet();

    [GeneratedRegex(@"^(?<name>\p{L}[^,:>]*?)\s*(,\s*|\s(?=at\s)|$)(?<rest>.*)$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex AllyName();

    [GeneratedRegex(@"\s#")]
    private static partial Regex Remark();

    [GeneratedRegex(@"^\s*[.…]+")]
    private static partial Regex Dots();
}

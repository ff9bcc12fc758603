using Generator.Domain.Sketches;

namespace Generator.Library.Files.Notes;

/// <summary>The words of one cell of notes with what stands round them: <c>!</c> or <c>?</c>, a reaction in brackets, counts behind <c>@</c>.</summary>
/// <param name="Text">The words themselves.</param>
/// <param name="Column">Column of the first of them, from 1.</param>
/// <param name="Firmness">How much they are wanted.</param>
/// <param name="Reaction">What stands in brackets; null where nothing does.</param>
/// <param name="Count">What stands behind <c>@</c>; null where nothing does.</param>
internal sealed record NotesWords(string Text, int Column, Firmness Firmness, NotesWords? Reaction, string? Count)
{
    /// <summary>Cells separated by commas outside brackets.</summary>
    public static IEnumerable<NotesWords> List(string text, int column)
    {
        var (depth, start) = (0, 0);
        for (var i = 0; i <= text.Length; i++)
        {
            depth += i == text.Length ? 0 : text[i] == '(' ? 1 : text[i] == ')' ? -1 : 0;
            if (i == text.Length || (text[i] == ',' && depth <= 0))
            {
                yield return Of(text[start..i], column + start);
                start = i + 1;
            }
        }
    }

    /// <summary>One cell.</summary>
    public static NotesWords Of(string text, int column)
    {
        var (rest, count, reaction) = (text, (string?)null, (NotesWords?)null);
        if (rest.IndexOf('@', StringComparison.Ordinal) is >= 0 and var at)
        {
            (rest, count) = (rest[..at], rest[(at + 1)..].Trim());
        }

        var firmness = Mark(ref rest);
        if (rest.IndexOf('(', StringComparison.Ordinal) is >= 0 and var open)
        {
            var close = rest.IndexOf(')', open);
            reaction = Of(rest[(open + 1)..(close < 0 ? rest.Length : close)], column + open + 1);
            rest = rest[..open];
            firmness = firmness == Firmness.Said ? Mark(ref rest) : firmness;
        }

        return new NotesWords(rest.Trim(), column + (rest.Length - rest.TrimStart().Length), firmness, reaction, count);
    }

    private static Firmness Mark(ref string text)
    {
        var trimmed = text.TrimEnd();
        if (trimmed.Length > 0 && trimmed[^1] is '!' or '?')
        {
            text = trimmed[..^1];
            return trimmed[^1] == '!' ? Firmness.Fixed : Firmness.Wish;
        }

        return Firmness.Said;
    }
}

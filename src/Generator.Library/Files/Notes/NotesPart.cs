using System.Text.RegularExpressions;

namespace Generator.Library.Files.Notes;

/// <summary>A piece of a line and where it stands; without white space round it.</summary>
/// <param name="Text">The piece.</param>
/// <param name="Column">Column of its first letter, from 1.</param>
internal readonly partial record struct NotesPart(string Text, int Column)
{
    public bool IsEmpty => Text.Length == 0;

    /// <summary>From one place of a text up to another.</summary>
    /// <param name="text">The text.</param>
    /// <param name="column">Column of its first letter.</param>
    /// <param name="from">First place, from 0.</param>
    /// <param name="to">The place behind the last.</param>
    public static NotesPart Of(string text, int column, int from, int to)
    {
        var piece = text[from..to];
        return new NotesPart(piece.Trim(), column + from + (piece.Length - piece.TrimStart().Length));
    }

    /// <summary>The pieces between commas (or semicolons, or "then") that stand outside brackets.</summary>
    public IEnumerable<NotesPart> Listed()
    {
        var start = 0;
        foreach (Match between in Between().Matches(Text))
        {
            if (Depth(between.Index) == 0)
            {
                yield return Of(Text, Column, start, between.Index);
                start = between.Index + between.Length;
            }
        }

        yield return Of(Text, Column, start, Text.Length);
    }

    private int Depth(int end)
    {
        var depth = 0;
        foreach (var letter in Text.AsSpan(0, end))
        {
            depth = Math.Max(0, depth + (letter is '(' or '[' ? 1 : letter is ')' or ']' ? -1 : 0));
        }

        return depth;
    }

    [GeneratedRegex(@"[,;](\s*(and\s+)?then\s)?|\s(and\s+)?then\s", RegexOptions.IgnoreCase)]
    private static partial Regex Between();
}

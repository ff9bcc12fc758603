namespace Generator.Library.Files.Notes;

/// <summary>A piece of a line and where it stands; without white space round it.</summary>
/// <param name="Text">The piece.</param>
/// <param name="Column">Column of its first letter, from 1.</param>
internal readonly record struct NotesPart(string Text, int Column)
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

    /// <summary>The pieces between commas (or semicolons) that stand outside brackets.</summary>
    public IEnumerable<NotesPart> Listed()
    {
        var (depth, start) = (0, 0);
        for (var i = 0; i <= Text.Length; i++)
        {
            depth = i == Text.Length ? 0 : Math.Max(0, depth + (Text[i] == '(' ? 1 : Text[i] == ')' ? -1 : 0));
            if (i == Text.Length || (Text[i] is ',' or ';' && depth == 0))
            {
                yield return Of(Text, Column, start, i);
                start = i + 1;
            }
        }
    }
}

using System.Globalization;
using Generator.Library.Reading;

namespace Generator.Paperwork.Text;

/// <summary>A page of fixed width: how text is cleaned, wrapped and set in columns.</summary>
public static class Page
{
    /// <summary>Letters on a line.</summary>
    public const int Width = 80;

    /// <summary>A ruled line.</summary>
    public static string Line(char mark) => new(mark, Width);

    /// <summary>The text on one line: control characters, marks that turn the direction of writing, and runs of spaces become one space.</summary>
    public static string Clean(string text) =>
        string.Join(' ', string.Concat(text.Select(c => UnseenMarks.BreaksLine(c) || UnseenMarks.TurnsDirection(c) ? ' ' : c)).Split(' ', StringSplitOptions.RemoveEmptyEntries));

    /// <summary>Letters as a reader counts them, so that an accent takes no room of its own.</summary>
    public static int LengthOf(string text) => new StringInfo(text).LengthInTextElements;

    /// <summary>Fills up with spaces; text that is too long stays whole.</summary>
    public static string Pad(string text, int width) => text + new string(' ', Math.Max(0, width - LengthOf(text)));

    /// <summary>Breaks text into lines of at most <paramref name="width"/> letters; a longer word is cut. No text gives no line.</summary>
    public static IReadOnlyList<string> Wrap(string text, int width)
    {
        var lines = new List<string>();
        var line = string.Empty;
        foreach (var word in Clean(text).Split(' ', StringSplitOptions.RemoveEmptyEntries).SelectMany(w => Cut(w, width)))
        {
            if (line.Length > 0 && LengthOf(line) + 1 + LengthOf(word) > width)
            {
                lines.Add(line);
                line = string.Empty;
            }

            line = line.Length == 0 ? word : line + " " + word;
        }

        if (line.Length > 0)
        {
            lines.Add(line);
        }

        return lines;
    }

    /// <summary>Text that starts with <paramref name="first"/> and goes on under its end.</summary>
    public static IEnumerable<string> Hang(string first, string text)
    {
        var indent = new string(' ', LengthOf(first));
        return Wrap(text, Width - indent.Length).Select((line, i) => (i == 0 ? first : indent) + line);
    }

    /// <summary>One row of a table; cells that do not fit go on in the line below.</summary>
    /// <param name="indent">Spaces before the first column.</param>
    /// <param name="cells">Text and width of each column; two spaces stand between columns.</param>
    public static IEnumerable<string> Row(int indent, params IReadOnlyList<(string Text, int Width)> cells)
    {
        var wrapped = cells.Select(c => Wrap(c.Text, c.Width)).ToArray();
        var height = Math.Max(1, wrapped.Max(w => w.Count));
        for (var i = 0; i < height; i++)
        {
            var parts = cells.Select((c, k) => Pad(i < wrapped[k].Count ? wrapped[k][i] : string.Empty, c.Width));
            yield return (new string(' ', indent) + string.Join("  ", parts)).TrimEnd();
        }
    }

    private static IEnumerable<string> Cut(string word, int width)
    {
        var letters = new StringInfo(word);
        for (var from = 0; from < letters.LengthInTextElements; from += width)
        {
            yield return letters.SubstringByTextElements(from, Math.Min(width, letters.LengthInTextElements - from));
        }
    }
}

using System.Buffers;
using System.Text;
using Generator.Library.Reading;

namespace Generator.Library.Files;

/// <summary>
/// Comma-separated text after RFC 4180: cells in quotation marks may hold commas, line breaks and doubled quotation marks. Reading also
/// takes semicolons or tabs, as spreadsheets of some countries write them, when the first line has them and no comma.
/// </summary>
public static class CsvText
{
    private static readonly SearchValues<char> Special = SearchValues.Create(",;\t\"\r\n");

    /// <summary>The rows with the line on which each begins; rows of blank cells are left out.</summary>
    public static IReadOnlyList<(int Line, IReadOnlyList<string> Cells)> Parse(string file, string text, ProblemList problems)
    {
        text = text.TrimStart('\uFEFF');
        var separator = Separator(text);
        var rows = new List<(int, IReadOnlyList<string>)>();
        var (position, line) = (0, 1);
        while (position < text.Length)
        {
            var begin = line;
            var cells = new List<string>();
            bool more;
            do
            {
                cells.Add(Cell(file, text, separator, ref position, ref line, problems));
                more = position < text.Length && text[position] == separator;
                position += more ? 1 : 0;
            }
            while (more);

            SkipLineEnd(text, ref position, ref line);
            if (cells.Any(c => !string.IsNullOrWhiteSpace(c)))
            {
                rows.Add((begin, cells));
            }
        }

        return rows;
    }

    /// <summary>One row with its line end (CR LF); cells are put in quotation marks where they need them.</summary>
    public static void Append(StringBuilder text, IEnumerable<string> cells) => text.AppendJoin(',', cells.Select(Quoted)).Append("\r\n");

    /// <summary>
    /// An apostrophe before text whose first mark makes spreadsheets run it (= + − @ and their wide forms, a tab or a line end), and before
    /// apostrophes with such a mark behind them, so that <see cref="Unharmed"/> gives every text back.
    /// </summary>
    public static string Harmless(string text) => RunsAfterApostrophes(text) ? "'" + text : text;

    /// <summary>The text that <see cref="Harmless"/> was given; also one whose apostrophe a spreadsheet has kept.</summary>
    public static string Unharmed(string text) => text.StartsWith('\'') && RunsAfterApostrophes(text) ? text[1..] : text;

    private static bool RunsAfterApostrophes(string text)
    {
        var first = text.AsSpan().TrimStart('\'').TrimStart(' ');
        return !first.IsEmpty && first[0] is '=' or '+' or '-' or '@' or '\t' or '\r' or '\n' or '＝' or '＋' or '－' or '＠';
    }

    private static string Quoted(string cell)
    {
        var plain = cell.AsSpan().IndexOfAny(Special) < 0 && cell.AsSpan().Trim().Length == cell.Length;
        return plain ? cell : "\"" + cell.Replace("\"", "\"\"", StringComparison.Ordinal) + "\"";
    }

    private static char Separator(string text)
    {
        var end = text.AsSpan().IndexOfAny('\r', '\n');
        var header = end < 0 ? text : text[..end];
        return header.Contains(',', StringComparison.Ordinal) ? ',' : header.Contains(';', StringComparison.Ordinal) ? ';' : header.Contains('\t', StringComparison.Ordinal) ? '\t' : ',';
    }

    private static string Cell(string file, string text, char separator, ref int position, ref int line, ProblemList problems)
    {
        if (position >= text.Length || text[position] != '"')
        {
            var from = position;
            while (position < text.Length && text[position] != separator && text[position] is not ('\r' or '\n'))
            {
                position++;
            }

            return text[from..position];
        }

        var begin = line;
        var cell = new StringBuilder();
        position++;
        while (position < text.Length)
        {
            if (text[position] != '"')
            {
                line += text[position] == '\n' || (text[position] == '\r' && (position + 1 == text.Length || text[position + 1] != '\n')) ? 1 : 0;
                cell.Append(text[position++]);
            }
            else if (position + 1 < text.Length && text[position + 1] == '"')
            {
                cell.Append('"');
                position += 2;
            }
            else
            {
                position++;
                Rest(file, text, separator, ref position, line, problems);
                return cell.ToString();
            }
        }

        problems.Add(new Problem(
            file, begin, string.Empty, FieldText.Quote(cell.ToString()), "A quotation mark opens here and is never closed.", "Maybe close it; a quotation mark inside a cell is written twice."));
        return cell.ToString();
    }

    /// <summary>What follows a closing quotation mark up to the next cell must be nothing but spaces.</summary>
    private static void Rest(string file, string text, char separator, ref int position, int line, ProblemList problems)
    {
        var from = position;
        while (position < text.Length && text[position] != separator && text[position] is not ('\r' or '\n'))
        {
            position++;
        }

        var rest = text[from..position];
        if (!string.IsNullOrWhiteSpace(rest))
        {
            problems.Add(new Problem(
                file, line, string.Empty, FieldText.Quote(rest), $"{FieldText.Quote(rest)} follows a closing quotation mark.", "Maybe a comma is missing; a quotation mark inside a cell is written twice."));
        }
    }

    private static void SkipLineEnd(string text, ref int position, ref int line)
    {
        if (position < text.Length)
        {
            position += text[position] == '\r' && position + 1 < text.Length && text[position + 1] == '\n' ? 2 : 1;
            line++;
        }
    }
}

using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Generator.Paperwork.Text;

namespace Generator.Cli.Work;

/// <summary>
/// Output on a terminal. Sheets are <see cref="Page.Width"/> letters wide; where the terminal has fewer, their lines are broken between words and go on under
/// the column in which they were broken. How grave a finding is stands in colour, too, where there is any; the words stay.
/// </summary>
/// <param name="inner">Where the lines go.</param>
/// <param name="width">Letters on a line of the terminal.</param>
/// <param name="colour">Whether it shows colours and they are wanted.</param>
internal sealed partial class TerminalOutput(TextWriter inner, int width, bool colour) : TextWriter
{
    /// <summary>Nothing narrower is laid out for; a narrower terminal breaks the lines itself.</summary>
    public const int Narrowest = 40;

    private readonly StringBuilder line = new();

    public override Encoding Encoding => inner.Encoding;

    /// <summary>The writer for a terminal, or the one given where the output goes anywhere else.</summary>
    public static TextWriter Of(TextWriter output, bool isRedirected)
    {
        if (isRedirected)
        {
            return output;
        }

        var width = 0;
        try
        {
            width = Console.WindowWidth;
        }
        catch (IOException)
        {
            // It does not say.
        }

        return new TerminalOutput(output, width <= 0 ? Page.Width : Math.Max(Narrowest, width), HasColour(Environment.GetEnvironmentVariable));
    }

    /// <summary>Colours are shown unless NO_COLOR says anything or the terminal has none.</summary>
    public static bool HasColour(Func<string, string?> variable) =>
        string.IsNullOrEmpty(variable("NO_COLOR")) && variable("TERM") is not ("dumb" or "" or null);

    public override void Write(char value)
    {
        if (value == '\n')
        {
            Show();
        }
        else
        {
            line.Append(value);
        }
    }

    public override void Flush()
    {
        if (line.Length > 0)
        {
            inner.Write(Coloured(line.ToString()));
            line.Clear();
        }

        inner.Flush();
    }

    private void Show()
    {
        foreach (var part in Broken(line.ToString().TrimEnd('\r')))
        {
            inner.Write(Coloured(part) + "\n");
        }

        line.Clear();
    }

    private IEnumerable<string> Broken(string text)
    {
        if (text.Length > 0 && text.All(c => c == text[0]) && !char.IsLetterOrDigit(text[0]))
        {
            yield return text[..Math.Min(width, text.Length)];
            yield break;
        }

        var indent = 0;
        while (Page.LengthOf(text) > width && BreakIn(text, indent) is > 0 and var at)
        {
            var rest = text[at..].TrimStart();
            indent = ColumnOf(text, at);
            indent = indent + rest.Split(' ').Max(Page.LengthOf) <= width ? indent : Math.Min(indent, width / 2);
            yield return text[..at].TrimEnd();
            text = new string(' ', indent) + rest;
        }

        yield return text;
    }

    /// <summary>The last blank at which a line of this width may end; the first one behind it when a single word fills the line; 0 for none.</summary>
    private int BreakIn(string text, int indent)
    {
        var room = new StringInfo(text).SubstringByTextElements(0, width).Length;
        var at = text.LastIndexOf(' ', Math.Min(room, text.Length - 1));
        return text.AsSpan(0, at + 1).TrimStart().IsEmpty || at <= indent ? Math.Max(0, text.IndexOf(' ', room)) : at;
    }

    /// <summary>Where the column begins that the break cuts: behind the last two blanks before it.</summary>
    private static int ColumnOf(string text, int at)
    {
        var gap = text.AsSpan(0, at).TrimEnd().LastIndexOf("  ");
        return gap < 0 ? 0 : gap + 2;
    }

    private string Coloured(string text) => !colour ? text : Severities().Replace(text, m => Paint(m.Value) + m.Value + "\e[0m");

    private static string Paint(string severity) => severity switch
    {
        "unsafe" => "\e[1;31m",
        "broken" => "\e[1;35m",
        _ => "\e[33m",
    };

    [GeneratedRegex(@"\b(unsafe|broken|rough)\b", RegexOptions.CultureInvariant | RegexOptions.NonBacktracking)]
    private static partial Regex Severities();
}

using System.Globalization;
using System.Text;

namespace Generator.Paperwork.Html;

/// <summary>Title and, below it, version on the left, "page 3 of 19" on the right, and a warning above every printed page, as styles of its margin.</summary>
internal static class RunningFoot
{
    public static string Of(PaperHead head)
    {
        const string Font = "font: 8pt system-ui, \"DejaVu Sans\", sans-serif;";
        var warning = head.Warning is null ? string.Empty : $"@top-center {{ content: {Quoted($"{PaperHead.Sign} {PaperHead.Forbidden.ToUpperInvariant()}")}; font: 700 9pt system-ui, \"DejaVu Sans\", sans-serif; vertical-align: bottom; }} ";
        return $"@page {{ margin: 15mm 12mm 16mm; {warning}@bottom-left {{ content: {Quoted($"{head.Title}.")} \"\\a \" {Quoted(head.Identity)}; white-space: pre-line; {Font} width: 80%; text-align: left; vertical-align: top; }} @bottom-right {{ content: \"\\a \" \"page \" counter(page) \" of \" counter(pages); white-space: pre-line; {Font} text-align: right; vertical-align: top; }} }}\n";
    }

    /// <summary>A text as a style sheet has it: all but letters and figures by their numbers (a bare space after one would be swallowed), so that nothing in a title can end the string or the sheet.</summary>
    private static string Quoted(string text)
    {
        var quoted = new StringBuilder("\"");
        foreach (var rune in text.EnumerateRunes())
        {
            if (rune.IsAscii && Rune.IsLetterOrDigit(rune))
            {
                quoted.Append(rune.ToString());
            }
            else
            {
                quoted.Append(CultureInfo.InvariantCulture, $"\\{rune.Value:x6}");
            }
        }

        return quoted.Append('"').ToString();
    }
}

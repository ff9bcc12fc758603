using System.Globalization;
using System.Text;

namespace Generator.Paperwork.Floor;

/// <summary>
/// How wide a text will be, without a font to ask: rather too wide than too narrow for the sans-serif fonts that phones and computers bring.
/// </summary>
public static class TextSize
{
    /// <summary>Height of a line as a multiple of the font size.</summary>
    public const double Line = 1.2;

    private const string Narrow = "iIjl.,:;'|!()[] ftr-";

    public static double Width(string text, double size)
    {
        var ems = 0.0;
        foreach (var rune in text.EnumerateRunes())
        {
            ems += Ems(rune);
        }

        return ems * size;
    }

    /// <summary>A font size at which the text is no wider than this, at most the one wanted.</summary>
    public static double Within(string text, double size, double width) => Math.Min(size, width / Math.Max(0.1, Width(text, 1)));

    /// <summary>The text, or as much of it as fits with an ellipsis.</summary>
    public static string Fit(string text, double size, double width)
    {
        if (Width(text, size) <= width)
        {
            return text;
        }

        var letters = new StringInfo(text);
        for (var length = letters.LengthInTextElements - 1; length > 0; length--)
        {
            var cut = letters.SubstringByTextElements(0, length).TrimEnd() + "…";
            if (Width(cut, size) <= width)
            {
                return cut;
            }
        }

        return "…";
    }

    /// <summary>A name, or as many of its words as fit, but none that only leads on to the next, as "von" does; one of which not even the first fits is cut.</summary>
    public static string Name(string name, double size, double width)
    {
        for (var shorter = name; shorter.Length > 0; shorter = shorter[..Math.Max(0, shorter.LastIndexOf(' '))].TrimEnd())
        {
            if (Width(shorter, size) <= width && (shorter.Length == name.Length || !LeadsOn(shorter)))
            {
                return shorter;
            }
        }

        return Fit(name, size, width);
    }

    /// <summary>Its last word, not its only one, begins with a small letter.</summary>
    private static bool LeadsOn(string name) => name.LastIndexOf(' ') is > 0 and var space && char.IsLower(name[space + 1]);

    /// <summary>The same behind a sign.</summary>
    public static string Name(string sign, string name, double size, double width) => sign + Name(name, size, width - Width(sign, size));

    private static double Ems(Rune rune)
    {
        // In bold, in which names stand on a plan, it is the widest letter.
        if (rune.Value is 0x57)
        {
            return 1.11;
        }

        if (rune.Value is 0x6D or 0x77 or 0x4D or 0x40 or 0x25 or 0x2026)
        {
            return 1.0;
        }

        if (rune.IsAscii)
        {
            return Narrow.Contains((char)rune.Value, StringComparison.Ordinal) ? 0.42 : Rune.IsUpper(rune) || rune.Value is '&' ? 0.76 : 0.64;
        }

        return Rune.GetUnicodeCategory(rune) switch
        {
            UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark or UnicodeCategory.Format => 0,
            _ when rune.Value < 0x0500 => 0.8,
            _ => 1.3,
        };
    }
}

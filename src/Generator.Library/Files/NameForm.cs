using System.Globalization;
using System.Text;

namespace Generator.Library.Files;

/// <summary>What a name must be so that everybody who reads a paper sees it, and sees it where it stands.</summary>
internal static class NameForm
{
    /// <summary>What is wrong with a name, and what to try; null for a good one.</summary>
    public static (string Message, string Maybe)? Fault(string name) => name switch
    {
        _ when name.Any(char.IsControl) => ("A name is one line of text.", "Maybe a tab or line break slipped in."),
        _ when name.Any(TurnsDirection) => ("A mark in this name turns the line round, so that papers would show something else.", "Maybe it slipped in when the name was copied; type the name anew."),
        _ when !name.EnumerateRunes().Any(IsSeen) => ("Nobody could see this name.", "Maybe only marks without a shape were copied; type the name anew."),
        _ => null,
    };

    private static bool TurnsDirection(char mark) => mark is (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069');

    /// <summary>Letters without a shape are letters all the same by their category: the Braille blank and the Hangul fillers.</summary>
    private static bool IsSeen(Rune rune) => rune.Value is not (0x2800 or 0x3164 or 0x115F or 0x1160 or 0xFFA0)
        && Rune.GetUnicodeCategory(rune) is not (UnicodeCategory.Format or UnicodeCategory.Control or UnicodeCategory.SpaceSeparator or UnicodeCategory.LineSeparator
            or UnicodeCategory.ParagraphSeparator or UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark or UnicodeCategory.OtherNotAssigned or UnicodeCategory.Surrogate);
}

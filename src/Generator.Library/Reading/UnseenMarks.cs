using System.Globalization;
using System.Text;

namespace Generator.Library.Reading;

/// <summary>Characters of a text that nobody sees, or that show it otherwise than it is written.</summary>
public static class UnseenMarks
{
    /// <summary>Scripts that join their letters by characters without a shape, and emoji, come from here on; in Latin, Greek and Cyrillic such a one only hides.</summary>
    private const int Joining = 0x0600;

    /// <summary>It turns the direction of what follows it.</summary>
    public static bool TurnsDirection(char letter) => letter is (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069');

    /// <summary>It ends a line, or moves whatever shows it.</summary>
    public static bool BreaksLine(char letter) => char.IsControl(letter) || letter is '\u2028' or '\u2029';

    /// <summary>Whether anybody could see the text. Letters without a shape are letters all the same by their category: the Braille blank and the Hangul fillers.</summary>
    public static bool IsSeen(string text) => text.EnumerateRunes().Any(rune => rune.Value is not (0x2800 or 0x3164 or 0x115F or 0x1160 or 0xFFA0)
        && Rune.GetUnicodeCategory(rune) is not (UnicodeCategory.Format or UnicodeCategory.Control or UnicodeCategory.SpaceSeparator or UnicodeCategory.LineSeparator
            or UnicodeCategory.ParagraphSeparator or UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark or UnicodeCategory.OtherNotAssigned or UnicodeCategory.Surrogate));

    /// <summary>The text holds something without a shape, by which two texts that look the same would differ; what joins letters of a script that needs it does not count.</summary>
    public static bool Hide(string text)
    {
        var runes = text.EnumerateRunes().ToList();
        return Enumerable.Range(0, runes.Count).Any(i => IsHidden(runes, i));
    }

    /// <summary>The text with everything that would not be seen, or would turn the line or move what shows it, written as <c>\u202E</c>; line ends stay.</summary>
    public static string Shown(string text)
    {
        var runes = text.EnumerateRunes().ToList();
        return string.Concat(runes.Select((r, i) => IsHidden(runes, i) || r.Value is 0x2028 or 0x2029 || (Rune.IsControl(r) && r.Value is not ('\n' or '\r')) ? string.Create(CultureInfo.InvariantCulture, $"\\u{r.Value:X4}") : r.ToString()));
    }

    private static bool IsHidden(List<Rune> runes, int at) => Rune.GetUnicodeCategory(runes[at]) == UnicodeCategory.Format
        && !(runes[at].Value is 0x200C or 0x200D && at > 0 && at + 1 < runes.Count && runes[at - 1].Value >= Joining && runes[at + 1].Value >= Joining);
}

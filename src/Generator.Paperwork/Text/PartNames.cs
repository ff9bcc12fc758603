using System.Globalization;
using System.Text;
using Generator.Domain;

namespace Generator.Paperwork.Text;

/// <summary>Performers as parts of file names: safe on every system whatever the performers are called, and no two alike.</summary>
public static class PartNames
{
    private const int Longest = 40;

    /// <summary>The hero's, then those of the attackers in the order of the brief, and an ally's.</summary>
    public static IReadOnlyList<string> Of(Brief brief)
    {
        var used = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        var files = new List<string>();
        foreach (var name in AllyWords.Everybody(brief).Select(p => p.Name))
        {
            var (stem, number) = (Stem(name), 2);
            var file = stem;
            while (!used.Add(file))
            {
                file = string.Create(CultureInfo.InvariantCulture, $"{stem}-{number++}");
            }

            files.Add(file);
        }

        return files;
    }

    /// <summary>Letters and digits of the name, everything else as single hyphens.</summary>
    private static string Stem(string name)
    {
        var stem = new StringBuilder();
        var length = 0;
        foreach (var rune in name.EnumerateRunes().Where(r => r != Rune.ReplacementChar))
        {
            if (length == Longest)
            {
                break;
            }

            if (Rune.IsLetterOrDigit(rune))
            {
                stem.Append(Rune.ToLowerInvariant(rune).ToString());
                length++;
            }
            else if (stem.Length > 0 && stem[^1] != '-' && Rune.GetUnicodeCategory(rune) is not (UnicodeCategory.NonSpacingMark or UnicodeCategory.Format))
            {
                stem.Append('-');
            }
        }

        var text = stem.ToString().Trim('-');
        return text.Length == 0 ? "performer" : text;
    }
}

using System.Text;
using Generator.Domain;

namespace Generator.Paperwork.Text;

/// <summary>Names in letters for which not every machine has a font: what shows or prints a page then puts boxes where the name belongs.</summary>
public static class NameLetters
{
    /// <summary>Letters from here on are in fewer fonts than those of Europe, which all have; from Armenian on.</summary>
    private const int FirstRare = 0x0530;

    /// <summary>By what each of those names is told apart all the same; null where all names are in letters of Europe.</summary>
    public static string? Note(Brief brief)
    {
        var signs = new[] { brief.Hero.Name }.Concat(brief.Attackers.Select(a => a.Name))
            .Select((name, i) => (Sign: Words.Sign(i - 1), Letters: Of(name))).Where(n => n.Letters is not null).ToList();
        return signs.Count == 0
            ? null
            : $"Where boxes stand instead of a name, this machine has no font for its letters; go by the sign: {string.Join(", ", signs.Select(s => $"{s.Sign} ({s.Letters})"))}.";
    }

    /// <summary>Which letters a name is written in; null for those of Europe.</summary>
    private static string? Of(string name) => name.EnumerateRunes().Where(r => r.Value >= FirstRare && Rune.IsLetter(r)).Select(r => (int?)r.Value).FirstOrDefault() switch
    {
        null => null,
        >= 0x1E00 and < 0x2000 => null,
        >= 0x0590 and < 0x0600 => "a name in Hebrew",
        (>= 0x0600 and < 0x0700) or (>= 0x0750 and < 0x0780) or (>= 0x08A0 and < 0x0900) => "a name in Arabic letters",
        >= 0x0900 and < 0x0E00 => "a name in letters of India",
        >= 0x0E00 and < 0x0E80 => "a name in Thai",
        (>= 0x1100 and < 0x1200) or (>= 0x2E80 and < 0xA000) or (>= 0xAC00 and < 0xD7B0) or (>= 0xF900 and < 0xFB00) or >= 0x20000 => "a name in Chinese, Japanese or Korean",
        _ => "a name in other letters",
    };
}

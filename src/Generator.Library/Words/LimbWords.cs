using Generator.Domain;
using Generator.Domain.Sketches;

namespace Generator.Library.Words;

/// <summary>Which limb words mean: a side, or one that goes by the stance or by where the attacker is.</summary>
internal static class LimbWords
{
    private static readonly string[] Owners = ["the", "his", "her", "their"];

    private static readonly string[] Which = ["left", "right", "lead", "rear", "near", "far", "same", "other"];

    private static readonly string[] Limbs = ["hand", "arm", "fist", "elbow", "palm", "wrist", "leg", "foot", "knee", "shin", "heel", "side"];

    /// <summary>
    /// The side of the limb that acts: the first word of the text, or behind "with the". "Takes the left wrist" speaks of the other's limb and names none.
    /// </summary>
    public static Side? SideOf(string text) => Acting(text) is { } word ? SideWords.Parse(word) : null;

    /// <summary>The text without "with the lead leg" and the like, or the hand of "right hand punch", which say of no record that it is meant.</summary>
    public static string Without(string text)
    {
        var words = PlainWord.Of(text).Split(' ');
        if (words is [("left" or "right") and var side, "hand", _, ..])
        {
            return Without(string.Join(' ', words[2..].Prepend(side)));
        }

        var with = Array.FindIndex(words, w => string.Equals(w, "with", StringComparison.Ordinal));
        return with > 0 && Owners.Contains(words.ElementAtOrDefault(with + 1), StringComparer.Ordinal) && Which.Contains(words.ElementAtOrDefault(with + 2), StringComparer.Ordinal)
            ? string.Join(' ', words.Where((_, i) => i < with || i > with + (Limbs.Contains(words.ElementAtOrDefault(with + 3), StringComparer.Ordinal) ? 3 : 2))) : text;
    }

    /// <summary>The word behind one that says which limb acts names that limb.</summary>
    public static string? LimbBehind(string text, string? word)
    {
        var words = PlainWord.Of(text).Split(' ');
        return word is null || Array.IndexOf(words, word) is not (>= 0 and var at) || !Limbs.Contains(words.ElementAtOrDefault(at + 1), StringComparer.Ordinal) ? null : words[at + 1];
    }

    /// <summary>Left, right, same and other where they speak of no limb that acts.</summary>
    public static IEnumerable<string> UnreadSides(string text)
    {
        var acting = Acting(text);
        return PlainWord.Of(text).Split(' ').Where(w => w is "same" or "other" || (w is "left" or "right" && !string.Equals(w, acting, StringComparison.Ordinal)));
    }

    /// <summary>Which limb, and the word that says so.</summary>
    public static (SketchFoot Foot, string Word)? FootOf(string text)
    {
        var words = PlainWord.Of(text).Split(' ');
        var word = words.Contains("lead", StringComparer.Ordinal) ? "lead"
            : words.Contains("rear", StringComparer.Ordinal) && !words.Contains("choke", StringComparer.Ordinal) ? "rear"
            : Acting(text);
        return word switch
        {
            "lead" => (SketchFoot.Lead, word),
            "rear" => (SketchFoot.Rear, word),
            "near" => (SketchFoot.Near, word),
            "far" => (SketchFoot.Far, word),
            "same" when IsOfLimb(words, word) => (SketchFoot.Same, word),
            "other" when IsOfLimb(words, word) || IsFreed(words) => (SketchFoot.Other, word),
            _ => null,
        };
    }

    /// <summary>The hand of the hero's that an attack takes hold of: "takes the left wrist".</summary>
    public static Side? TakenOf(string text)
    {
        var words = PlainWord.Of(text).Split(' ');
        var at = Array.FindIndex(words, w => SideWords.Parse(w) is not null);
        return at > 0 && words.ElementAtOrDefault(at + 1) is "wrist" or "hand" or "arm" or "sleeve" or "forearm" && !string.Equals(words[at], Acting(text), StringComparison.Ordinal) ? SideWords.Parse(words[at]) : null;
    }

    private static bool IsOfLimb(string[] words, string word) => Limbs.Contains(words.ElementAtOrDefault(Array.IndexOf(words, word) + 1), StringComparer.Ordinal);

    private static bool IsFreed(string[] words) => words[0] is "frees" or "free";

    /// <summary>The word that stands for the limb that acts: the first one, the one behind "with the", or the hand that is freed.</summary>
    private static string? Acting(string text)
    {
        var words = PlainWord.Of(text).Split(' ');
        var with = Array.FindIndex(words, w => string.Equals(w, "with", StringComparison.Ordinal));
        if (IsFreed(words) && Owners.Contains(words.ElementAtOrDefault(1), StringComparer.Ordinal))
        {
            return words.ElementAtOrDefault(2);
        }

        return with >= 0 && Owners.Contains(words.ElementAtOrDefault(with + 1), StringComparer.Ordinal) ? words.ElementAtOrDefault(with + 2) : words[0];
    }
}

using Generator.Domain;

namespace Generator.Library.Words;

/// <summary>Words that say nothing but that something is done again: "same again", "the same with the other hand", "same defence".</summary>
/// <param name="Family">Of what kind it is; null where that is not said.</param>
/// <param name="IsOther">On the other side.</param>
public sealed record RepeatWords(Family? Family, bool IsOther)
{
    private static readonly HashSet<string> Again = new(["same", "again", "ditto", "repeat", "repeats", "repeated"], StringComparer.Ordinal);

    private static readonly HashSet<string> Beside = new(
        ["the", "a", "an", "and", "then", "it", "that", "this", "does", "do", "with", "from", "on", "to", "time", "once", "more", "thing", "move", "one", "her", "his", "their", "but", "in", "as", "before",
            "hand", "arm", "leg", "foot", "side", "fist", "elbow", "knee", "attack", "other", "opposite"],
        StringComparer.Ordinal);

    private static readonly Dictionary<string, Family> Kinds = new(StringComparer.Ordinal)
    {
        ["defence"] = Domain.Family.Defence,
        ["defense"] = Domain.Family.Defence,
        ["answer"] = Domain.Family.Defence,
        ["block"] = Domain.Family.Defence,
        ["parry"] = Domain.Family.Defence,
        ["kick"] = Domain.Family.Kick,
        ["strike"] = Domain.Family.Strike,
        ["blow"] = Domain.Family.Strike,
        ["throw"] = Domain.Family.Throw,
        ["lock"] = Domain.Family.Lock,
        ["finish"] = Domain.Family.Finish,
    };

    /// <summary>What a text repeats; null when it says anything else.</summary>
    public static RepeatWords? Of(string text)
    {
        var plain = PlainWord.Of(text);
        var words = plain.Split(' ');
        return (words.Any(Again.Contains) || plain is "once more") && words.All(w => Again.Contains(w) || Beside.Contains(w) || Kinds.ContainsKey(w))
            ? new RepeatWords(words.Where(Kinds.ContainsKey).Select(w => (Family?)Kinds[w]).FirstOrDefault(), words.Any(w => w is "other" or "opposite"))
            : null;
    }
}

using Generator.Domain;

namespace Generator.Library.Words;

/// <summary>Words that mean any technique of a family, with or without "a" or "any" before them.</summary>
internal static class FamilyWords
{
    private static readonly Dictionary<string, Family> Words = new(StringComparer.Ordinal)
    {
        ["defence"] = Family.Defence,
        ["defense"] = Family.Defence,
        ["defends"] = Family.Defence,
        ["strike"] = Family.Strike,
        ["blow"] = Family.Strike,
        ["kick"] = Family.Kick,
        ["throw"] = Family.Throw,
        ["lock"] = Family.Lock,
        ["hold"] = Family.Lock,
        ["escape"] = Family.Escape,
        ["gets free"] = Family.Escape,
        ["breaks free"] = Family.Escape,
        ["finish"] = Family.Finish,
        ["knockout"] = Family.Finish,
        ["setback"] = Family.Setback,
        ["is hit"] = Family.Setback,
        ["takes one"] = Family.Setback,
        ["takes it"] = Family.Setback,
        ["takes the hit"] = Family.Setback,
        ["gets hit"] = Family.Setback,
        ["eats it"] = Family.Setback,
        ["sells it"] = Family.Setback,
    };

    private static readonly Dictionary<string, Family> Kinds = new(StringComparer.Ordinal)
    {
        ["block"] = Family.Defence,
        ["parry"] = Family.Defence,
        ["parrie"] = Family.Defence,
        ["dodge"] = Family.Defence,
        ["avoid"] = Family.Defence,
        ["catche"] = Family.Defence,
        ["kick"] = Family.Kick,
        ["throw"] = Family.Throw,
        ["lock"] = Family.Lock,
    };

    /// <summary>The family that one of the words names, whatever else is said: "middle block" is some defence.</summary>
    public static Family? Within(string text)
    {
        var words = PlainWord.Of(text).Split(' ');
        foreach (var (word, i) in words.Select((w, i) => (w, i)))
        {
            if (!IsMet(words, i) && (Kinds.TryGetValue(word, out var family) || (word.EndsWith('s') && Kinds.TryGetValue(word[..^1], out family))))
            {
                return family;
            }
        }

        return null;
    }

    /// <summary>The word is what something is done about: "lifts the shin against the kick" is no kick.</summary>
    private static bool IsMet(string[] words, int at)
    {
        var before = at > 1 && words[at - 1] is ("the" or "a" or "his" or "her" or "their") ? at - 2 : at - 1;
        return before >= 0 && words[before] is ("against" or "under" or "from" or "over" or "outside" or "inside");
    }

    /// <summary>The family that the whole text names; null where it says more or less.</summary>
    public static Family? Of(string text)
    {
        var words = PlainWord.Of(text).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var rest = string.Join(' ', words is ["a" or "an" or "any" or "some", ..] ? words[1..] : words);
        return Words.TryGetValue(rest, out var family) || (rest.EndsWith('s') && Words.TryGetValue(rest[..^1], out family)) ? family : null;
    }
}

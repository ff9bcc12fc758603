using Generator.Domain;

namespace Generator.Library.Words;

/// <summary>Words that mean any technique of a family, with or without "a" or "any" before them.</summary>
internal static class FamilyWords
{
    private static readonly Dictionary<string, Family> Words = new(StringComparer.Ordinal)
    {
        ["defence"] = Family.Defence,
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
        foreach (var word in PlainWord.Of(text).Split(' '))
        {
            if (Kinds.TryGetValue(word, out var family) || (word.EndsWith('s') && Kinds.TryGetValue(word[..^1], out family)))
            {
                return family;
            }
        }

        return null;
    }

    /// <summary>The family that the whole text names; null where it says more or less.</summary>
    public static Family? Of(string text)
    {
        var words = PlainWord.Of(text).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var rest = string.Join(' ', words is ["a" or "an" or "any" or "some", ..] ? words[1..] : words);
        return Words.TryGetValue(rest, out var family) || (rest.EndsWith('s') && Words.TryGetValue(rest[..^1], out family)) ? family : null;
    }
}

using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Words;

/// <summary>What the words mean by which a brief avoids and favours.</summary>
public static class WishWords
{
    /// <summary>The word means this technique: its id, with or without side, or its family.</summary>
    public static bool Means(string word, Technique technique) => technique.GoesBy(word) || string.Equals(word, EnumWords.Of(technique.Family), StringComparison.Ordinal);

    /// <summary>The same of an attack: its id or its kind.</summary>
    public static bool Means(string word, Attack attack) => attack.GoesBy(word) || string.Equals(word, EnumWords.Of(attack.Kind), StringComparison.Ordinal);

    /// <summary>The word in a sentence: the name of what goes by it, without its side where the word has none; families and kinds as they are.</summary>
    public static string InWords(string word, Book book)
    {
        var (id, name) = book.Techniques.FirstOrDefault(t => t.GoesBy(word)) is { } technique ? (technique.Id, technique.Name)
            : book.Attacks.FirstOrDefault(a => a.GoesBy(word)) is { } attack ? (attack.Id, attack.Name) : (word, word.Replace('-', ' '));
        var side = id.Length > word.Length ? id[word.Length..].Replace('-', ' ') : string.Empty;
        return (name.EndsWith(side, StringComparison.Ordinal) ? name[..^side.Length] : name).ToLowerInvariant();
    }

    /// <summary>There is something that both words mean.</summary>
    public static bool Meet(string one, string other, Book book) =>
        book.Techniques.Any(t => Means(one, t) && Means(other, t)) || book.Attacks.Any(k => Means(one, k) && Means(other, k));
}

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

    /// <summary>There is something that both words mean.</summary>
    public static bool Meet(string one, string other, Book book) =>
        book.Techniques.Any(t => Means(one, t) && Means(other, t)) || book.Attacks.Any(k => Means(one, k) && Means(other, k));
}

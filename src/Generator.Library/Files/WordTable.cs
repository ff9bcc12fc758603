using Generator.Library.Reading;
using Generator.Library.Words;

namespace Generator.Library.Files;

/// <summary>Finds records of one kind by the words of a notebook, and says what is wrong with a word that means none.</summary>
internal sealed class WordTable<T>(string kind, Func<string, Lookup<T>> find)
{
    /// <summary>One record; both sides when the word leaves the side open; none when the word is unknown or too wide.</summary>
    public IReadOnlyList<T> Find(string word) => find(word).Found;

    public string Unknown(string word) => find(word).IsTooWide
        ? $"{FieldText.Quote(word)} alone can mean more than one {kind}."
        : $"The library has no {kind} called {FieldText.Quote(word)}.";

    public string Advice(string word)
    {
        var near = find(word).Suggestions;
        return near.Count > 0 ? NearestWords.OneOf(near) : "Maybe it goes by another name; \"generator library\" lists them all.";
    }
}

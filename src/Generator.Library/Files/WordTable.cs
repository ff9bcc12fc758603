using Generator.Library.Reading;
using Generator.Library.Words;

namespace Generator.Library.Files;

/// <summary>Finds records of one kind by any of their words; capitals and hyphens do not matter.</summary>
internal sealed class WordTable<T>
{
    private readonly Dictionary<string, List<T>> records = new(StringComparer.Ordinal);
    private readonly List<string> ids;
    private readonly string kind;

    public WordTable(string kind, IEnumerable<T> all, Func<T, IEnumerable<string>> words, Func<T, string> id)
    {
        this.kind = kind;
        ids = [];
        foreach (var record in all)
        {
            ids.Add(id(record));
            foreach (var word in words(record).Select(PlainWord.Of).Distinct(StringComparer.Ordinal))
            {
                if (!records.TryGetValue(word, out var list))
                {
                    records.Add(word, list = []);
                }

                list.Add(record);
            }
        }
    }

    /// <summary>One record; both sides when the word leaves the side open; none when the word is unknown.</summary>
    public IReadOnlyList<T> Find(string word) => records.GetValueOrDefault(PlainWord.Of(word)) ?? [];

    public string Unknown(string word) => $"The library has no {kind} called {FieldText.Quote(word)}.";

    public string Advice(string word)
    {
        var near = NearestWords.Of(word, ids);
        return near.Count > 0 ? NearestWords.OneOf(near) : "Maybe it goes by another name; \"generator library\" lists them all.";
    }
}

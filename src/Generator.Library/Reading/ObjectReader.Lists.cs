using System.Globalization;
using Newtonsoft.Json.Linq;

namespace Generator.Library.Reading;

/// <content>Getters of objects and lists.</content>
public sealed partial class ObjectReader
{
    /// <summary>An object; null when absent or after a problem.</summary>
    public ObjectReader? Object(string field) => Token(field) is { } value ? ObjectOf(value, PathOf(field)) : null;

    /// <summary>A list of objects; empty when absent. What is no object is a problem and left out.</summary>
    public IReadOnlyList<ObjectReader> Objects(string field) =>
        [.. Entries(field).Select(e => ObjectOf(e.Value, e.Path)).OfType<ObjectReader>()];

    /// <summary>A list of texts, each trimmed and not empty; empty when absent.</summary>
    public IReadOnlyList<string> Texts(string field) => [.. Entries(field).Select(e => TextOf(e.Value, e.Path)).OfType<string>()];

    /// <summary>A list of words of an enumeration; empty when absent.</summary>
    public IReadOnlyList<T> Words<T>(string field)
        where T : struct, Enum
    {
        var words = new List<T>();
        foreach (var (value, path) in Entries(field))
        {
            if (WordOf(typeof(T), value, path) is { } word)
            {
                words.Add((T)word);
            }
        }

        return words;
    }

    /// <summary>A list of numbers, as many as <paramref name="count"/> says; null when absent or after a problem.</summary>
    public IReadOnlyList<decimal>? Numbers(string field, int count, Quantity quantity) => Series(field, count, quantity, whole: false);

    /// <summary>A list of whole numbers, as many as <paramref name="count"/> says; null when absent or after a problem.</summary>
    public IReadOnlyList<int>? Wholes(string field, int count, Quantity quantity) =>
        Series(field, count, quantity, whole: true)?.Select(n => (int)n).ToList();

    /// <summary>The entries of a list with their paths, for lists of mixed forms; empty when absent or no list (a problem).</summary>
    public IReadOnlyList<Entry> Entries(string field)
    {
        var value = Token(field);
        if (value is null)
        {
            return [];
        }

        if (value is JArray list)
        {
            var path = PathOf(field);
            return [.. list.Select((v, i) => new Entry(v, path + "[" + i.ToString(CultureInfo.InvariantCulture) + "]"))];
        }

        Refuse(field, $"{FieldText.Of(value)} is not a list.", "Maybe put [ and ] round it.");
        return [];
    }

    private List<decimal>? Series(string field, int count, Quantity quantity, bool whole)
    {
        if (!Has(field))
        {
            return null;
        }

        var entries = Entries(field);
        if (Token(field) is JArray && entries.Count != count)
        {
            Refuse(field, string.Create(CultureInfo.InvariantCulture, $"There must be {count} numbers, not {entries.Count}."), "Maybe write them in [ and ], with commas between.");
            return null;
        }

        var numbers = new List<decimal>(count);
        foreach (var (value, path) in entries)
        {
            if (NumberOf(value, path, quantity, whole) is { } number)
            {
                numbers.Add(number);
            }
        }

        return numbers.Count == count ? numbers : null;
    }

    private ObjectReader? ObjectOf(JToken value, string path)
    {
        if (value is JObject inner)
        {
            return new ObjectReader(inner, path, File, problems);
        }

        Refuse(value, path, $"{FieldText.Of(value)} is not an object.", "Maybe put { and } round it, with named fields inside.");
        return null;
    }
}

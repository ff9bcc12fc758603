using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Files;

/// <summary>Reads what a brief avoids and favours: techniques and attacks by id, name or alias, with or without side, families, and kinds of attack.</summary>
internal static class WishReader
{
    /// <summary>More than these would leave little to choose.</summary>
    private const int Most = 40;

    private static readonly string[] Wide = [.. EnumWords.All<Family>().Concat(EnumWords.All<AttackKind>()).Distinct(StringComparer.Ordinal)];

    public static IReadOnlyList<string> Wishes(ObjectReader root, string field, Book book)
    {
        var words = new Vocabulary(book);
        var wishes = new List<string>();
        foreach (var (value, path) in root.Entries(field))
        {
            if (value.Type != Newtonsoft.Json.Linq.JTokenType.String || value.ToString().Trim() is not { Length: > 0 } word)
            {
                root.Refuse(value, path, $"{FieldText.Of(value)} is no word for a technique or an attack.", "Maybe write an id, a name, a family such as \"kick\", or a kind of attack such as \"grab\".");
                continue;
            }

            List<string> ids = Array.IndexOf(Wide, word) >= 0 ? [word] : Ids(words, word);
            if (ids.Count == 0)
            {
                root.Refuse(value, path, $"The library has no technique and no attack called {FieldText.Quote(word)}.", words.Techniques.Advice(word));
            }

            wishes.AddRange(ids.Except(wishes, StringComparer.Ordinal));
        }

        if (wishes.Count > Most)
        {
            root.Refuse(field, $"There are {wishes.Count} entries; {Most} are the most.", "Maybe a family says as much as its techniques.");
        }

        return wishes;
    }

    /// <summary>A technique or an attack, of one side or either.</summary>
    public static string? Signature(ObjectReader root, Book book)
    {
        if (root.Text("signature") is not { } word)
        {
            return null;
        }

        var words = new Vocabulary(book);
        var ids = Ids(words, word);
        if (ids.Count == 0)
        {
            root.Refuse("signature", $"The library has no technique and no attack called {FieldText.Quote(word)}.", words.Techniques.Advice(word));
        }

        if (ids.Count > 1)
        {
            root.Remark("signature", $"{FieldText.Quote(word)} means {ids.Count} things; the signature is {ids[0]}.", $"Maybe one of these is meant: {string.Join(", ", ids.Skip(1))}.");
        }

        return ids.Count == 0 ? null : ids[0];
    }

    /// <summary>Nothing is both avoided and favoured.</summary>
    public static void Check(ObjectReader root, Brief brief)
    {
        foreach (var both in brief.Favour.Intersect(brief.Avoid, StringComparer.Ordinal))
        {
            root.Refuse("favour", $"{FieldText.Quote(both)} is both avoided and favoured.", "Maybe leave it out of one of the two.");
        }
    }

    /// <summary>What a word means among techniques and attacks; what is an id means that record alone.</summary>
    private static List<string> Ids(Vocabulary words, string word)
    {
        var ids = Ids(words.Techniques.Find(word).Select(t => (t.Id, t.BaseId))).Concat(Ids(words.Attacks.Find(word).Select(k => (k.Id, k.BaseId)))).Distinct(StringComparer.Ordinal).ToList();
        return ids.Contains(word, StringComparer.Ordinal) ? [word] : ids;
    }

    /// <summary>One record by its id, its two sides by the id without.</summary>
    private static IEnumerable<string> Ids(IEnumerable<(string Id, string BaseId)> found) => found.ToList() switch
    {
        [] => [],
        [var one] => [one.Id],
        var sides => [.. sides.Select(s => s.BaseId).Distinct(StringComparer.Ordinal)],
    };
}

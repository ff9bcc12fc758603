using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Words;

/// <summary>Finds records by what people remember of them: ids, names, notebook words and hazards, with typing mistakes.</summary>
public static class LibrarySearch
{
    /// <summary>Cost of a word of the query that a record lacks.</summary>
    private const int Lacking = 100;

    /// <summary>What was found.</summary>
    /// <param name="Kind">A family, attack or reaction.</param>
    /// <param name="Id">Id without side.</param>
    /// <param name="Name">Name without side.</param>
    /// <param name="Aliases">Notebook words.</param>
    public sealed record Hit(string Kind, string Id, string Name, IReadOnlyList<string> Aliases);

    /// <summary>The records that fit best, best first: whole phrases before single words, fewer mistakes before more.</summary>
    public static IReadOnlyList<Hit> Find(Book book, string query, int most = 15)
    {
        var plain = PlainWord.Of(query);
        var words = plain.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (words.Length == 0)
        {
            return [];
        }

        var techniques = book.Techniques.DistinctBy(t => t.BaseId, StringComparer.Ordinal).Select(t => (Hit: new Hit(EnumWords.Of(t.Family), t.BaseId, SideWords.WithoutSide(t.Name, t.Side), t.Aliases), More: t.Hazard));
        var attacks = book.Attacks.DistinctBy(a => a.BaseId, StringComparer.Ordinal).Select(a => (Hit: new Hit("attack", a.BaseId, SideWords.WithoutSide(a.Name, a.Side), a.Aliases), More: a.Hazard));
        var reactions = book.Reactions.Select(r => (Hit: new Hit("reaction", r.Id, r.Name, r.Aliases), More: r.Risk));
        return [.. techniques.Concat(attacks).Concat(reactions)
            .Select((r, order) => (r.Hit, order, Cost: Cost(plain, words, r.Hit, r.More)))
            .Where(r => r.Cost < Lacking * words.Length)
            .OrderBy(r => r.Cost).ThenBy(r => r.order)
            .Take(most).Select(r => r.Hit)];
    }

    private static int Cost(string plain, string[] words, Hit hit, string more)
    {
        var phrases = new[] { hit.Id, hit.Name }.Concat(hit.Aliases).Select(PlainWord.Of).ToList();
        var whole = phrases.Min(p => NearestWords.Distance(plain, p));
        if (whole <= Math.Max(1, plain.Length / 5))
        {
            return whole;
        }

        var known = phrases.Append(PlainWord.Of(more)).SelectMany(p => p.Split(' ')).Distinct(StringComparer.Ordinal).ToList();
        return 10 + words.Sum(w => known.Min(k => Cost(w, k)));
    }

    /// <summary>A word that begins like the one asked for is as good as one with a letter wrong.</summary>
    private static int Cost(string word, string known)
    {
        var distance = NearestWords.Distance(word, known);
        var begins = word.Length >= 3 && known.StartsWith(word, StringComparison.Ordinal);
        return distance == 0 ? 0 : begins ? 1 : distance <= word.Length / 3 ? 2 * distance : Lacking;
    }
}

using Generator.Domain;
using Generator.Library.Reading;

namespace Generator.Library.Words;

/// <summary>All words of one kind of record.</summary>
internal sealed class WordIndex<T>
{
    /// <summary>How many records an unknown word is answered with.</summary>
    public const int MostSuggestions = 3;

    private readonly Func<string, (IEnumerable<string> Ids, bool IsSpelt)> nearest;
    private readonly Func<T, bool> goesByStance;

    /// <summary>Records by base id, in the order of the book.</summary>
    private readonly Dictionary<string, List<WordEntry<T>>> records = new(StringComparer.Ordinal);

    /// <summary>Base id by word without gaps.</summary>
    private readonly Dictionary<string, string> owners = new(StringComparer.Ordinal);

    /// <summary>Base id by plain word, for suggestions.</summary>
    private readonly Dictionary<string, string> phrases = new(StringComparer.Ordinal);

    /// <param name="entries">The records with their words.</param>
    /// <param name="goesByStance">"Rear" before its name says with which limb, and not from where it comes.</param>
    /// <param name="nearest">Ids without side of the records that fit an unknown text best, best first, and whether all of its words are known.</param>
    public WordIndex(IEnumerable<WordEntry<T>> entries, Func<T, bool> goesByStance, Func<string, (IEnumerable<string> Ids, bool IsSpelt)> nearest)
    {
        (this.nearest, this.goesByStance) = (nearest, goesByStance);
        foreach (var entry in entries)
        {
            if (!records.TryGetValue(entry.BaseId, out var sides))
            {
                records[entry.BaseId] = sides = [];
            }

            sides.Add(entry);
            foreach (var word in entry.Words)
            {
                owners.TryAdd(PlainWord.Squeezed(word), entry.BaseId);
                phrases.TryAdd(PlainWord.Of(word), entry.BaseId);
            }
        }
    }

    public Lookup<T> Find(string text)
    {
        var plain = PlainWord.Of(text);
        if (plain.Length == 0)
        {
            return new([], []);
        }

        var (rest, side) = SideWords.Split(plain);
        if (Whole(plain) is { } whole)
        {
            return new(whole, []);
        }

        if (Owner(rest) is { } id)
        {
            return new(Sides(id, side), []);
        }

        if (Glued(plain) is var (gluedId, gluedSide))
        {
            return new(Sides(gluedId, gluedSide), []);
        }

        return new([], Suggest(rest, side), WideWords.Contains(rest));
    }

    /// <summary>A word that stands for a record as it is; an alias that ends in a side means that side.</summary>
    private List<T>? Whole(string plain) => Owner(plain) is { } id ? Sides(id, SideWords.Split(plain).Side) : null;

    /// <summary>The record that a phrase stands for, with "lead" or "rear" before it or not.</summary>
    private string? Owner(string plain)
    {
        if (owners.TryGetValue(Squeeze(plain), out var id))
        {
            return id;
        }

        var gap = plain.IndexOf(' ', StringComparison.Ordinal);
        return gap > 0 && plain[..gap] is "lead" or "rear" && owners.GetValueOrDefault(Squeeze(plain[(gap + 1)..])) is { } named && goesByStance(records[named][0].Record) ? named : null;
    }

    /// <summary>"lefthook" and "hookleft".</summary>
    private (string Id, Side Side)? Glued(string plain)
    {
        var squeezed = Squeeze(plain);
        foreach (var side in Enum.GetValues<Side>())
        {
            var word = EnumWords.Of(side);
            if ((squeezed.StartsWith(word, StringComparison.Ordinal) && owners.TryGetValue(squeezed[word.Length..], out var id))
                || (squeezed.EndsWith(word, StringComparison.Ordinal) && owners.TryGetValue(squeezed[..^word.Length], out id)))
            {
                return (id, side);
            }
        }

        return null;
    }

    /// <summary>The record on one side, or on every side it has. What has no side is its own mirror, so a side changes nothing.</summary>
    private List<T> Sides(string id, Side? side) =>
        [.. records[id].Where(e => side is null || e.Side is null || e.Side == side).Select(e => e.Record)];

    /// <summary>What a wide word offers, then words with a typing slip and what fits the text best (that first where nothing is misspelt), then whatever takes the fewest changes of letters.</summary>
    private IReadOnlyList<string> Suggest(string rest, Side? side)
    {
        var slips = Ids(phrases.Keys.Where(p => NearestWords.Distance(rest, p) <= Math.Min(2, rest.Length / 4)).OrderBy(p => NearestWords.Distance(rest, p)).ThenBy(p => p, StringComparer.Ordinal));
        var (fitting, isSpelt) = nearest(rest);
        var near = Ids(WideWords.OffersFor(rest).Where(phrases.ContainsKey))
            .Concat(isSpelt ? fitting.Concat(slips) : slips.Concat(fitting))
            .Concat(Ids(phrases.Keys.OrderBy(p => NearestWords.Distance(rest, p)).ThenBy(p => p, StringComparer.Ordinal)));
        return [.. near.Distinct(StringComparer.Ordinal).Take(MostSuggestions).Select(id => Mirror.Id(id, records[id][0].Side is null ? null : side))];

        IEnumerable<string> Ids(IEnumerable<string> words) => words.Select(p => phrases[p]);
    }

    private static string Squeeze(string plain) => plain.Replace(" ", string.Empty, StringComparison.Ordinal);
}

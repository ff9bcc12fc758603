using Generator.Domain;

namespace Generator.Library.Words;

/// <summary>
/// Resolves what people write in a notebook: an id, a name or an alias, in any case and with spaces, hyphens or neither, with or without a side
/// ("left hook", "hook L"). "Lead" and "rear" depend on the stance, so both sides come back.
/// A word may stand for a technique and for an attack as well; the column that it stands in settles which finder to ask.
/// </summary>
public sealed class WordFinder
{
    private readonly WordIndex<Technique> techniques;
    private readonly WordIndex<Attack> attacks;
    private readonly WordIndex<Reaction> reactions;

    public WordFinder(Book book)
    {
        techniques = new(book.Techniques.Select(t => new WordEntry<Technique>(t, t.BaseId, t.Name, t.Aliases, t.Side)), _ => true, Nearest(() => RankedRecords.Techniques(book), t => t.BaseId));
        attacks = new(book.Attacks.Select(a => new WordEntry<Attack>(a, a.BaseId, a.Name, a.Aliases, a.Side)), a => !a.Line.IsGrab, Nearest(() => RankedRecords.Attacks(book), a => a.BaseId));
        reactions = new(book.Reactions.Select(r => new WordEntry<Reaction>(r, r.Id, r.Name, r.Aliases, Side: null)), _ => true, Nearest(() => RankedRecords.Reactions(book), r => r.Id));
    }

    public Lookup<Technique> Technique(string text) => techniques.Find(text);

    public Lookup<Attack> Attack(string text) => attacks.Find(text);

    public Lookup<Reaction> Reaction(string text) => reactions.Find(text);

    /// <summary>Ids without side of the records that fit a text best. The ranking is asked for when the first unknown word turns up.</summary>
    private static Func<string, (IEnumerable<string> Ids, bool IsSpelt)> Nearest<T>(Func<Ranking<T>> ranking, Func<T, string> idOf) =>
        text => (ranking().Find(text, WordIndex<T>.MostSuggestions).Select(r => idOf(r.Record)), ranking().Knows(text));
}

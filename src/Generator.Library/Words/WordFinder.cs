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
        techniques = new(book.Techniques.Select(t => new WordEntry<Technique>(t, t.BaseId, t.Name, t.Aliases, t.Side)));
        attacks = new(book.Attacks.Select(a => new WordEntry<Attack>(a, a.BaseId, a.Name, a.Aliases, a.Side)));
        reactions = new(book.Reactions.Select(r => new WordEntry<Reaction>(r, r.Id, r.Name, r.Aliases, Side: null)));
    }

    public Lookup<Technique> Technique(string text) => techniques.Find(text);

    public Lookup<Attack> Attack(string text) => attacks.Find(text);

    public Lookup<Reaction> Reaction(string text) => reactions.Find(text);
}

using System.Collections.Concurrent;
using Generator.Domain;
using Generator.Library.Words;

namespace Generator.Library;

/// <summary>
/// The whole library in memory: stances, settings, and every attack, technique and reaction, sided ones for both sides.
/// Order is fixed by the files, so that equal files give equal books.
/// </summary>
public sealed class Book
{
    private readonly ConcurrentDictionary<Tempo, Book> atTempo = new();
    private readonly Dictionary<string, int> techniqueIndex;
    private readonly Dictionary<string, int> attackIndex;
    private readonly Dictionary<string, int> reactionIndex;
    private readonly bool[] listed;

    /// <summary>Builds a book from one record a technique and attack; the other side of sided ones is added.</summary>
    public Book(string version, StanceTable stances, Settle settle, IEnumerable<Technique> techniques, IEnumerable<Attack> attacks, IEnumerable<Reaction> reactions)
    {
        Own = this;
        Version = version;
        Stances = stances;
        Settle = settle;
        Techniques = [.. techniques.SelectMany(t => t.Side is null ? [t] : new[] { t, Mirror.Of(t) })];
        Attacks = [.. attacks.SelectMany(a => a.Side is null ? [a] : new[] { a, Mirror.Of(a) })];
        Reactions = [.. reactions];
        techniqueIndex = Index(Techniques.Select(t => t.Id));
        attackIndex = Index(Attacks.Select(a => a.Id));
        reactionIndex = Index(Reactions.Select(r => r.Id));
        listed = Listed();
    }

    private Book(Book own, Tempo tempo)
    {
        Own = own;
        Version = own.Version;
        Stances = own.Stances.At(tempo, own.Settle);
        Settle = own.Settle.At(tempo);
        Holds = own.Holds;
        Things = own.Things;
        Props = own.Props;
        Manners = own.Manners;
        Styles = own.Styles;
        Combinations = [.. own.Combinations.Select(c => c with { Gap = tempo.Lasting(c.Gap, c.GapSeconds) })];
        Techniques = [.. own.Techniques.Select(t => tempo.Lasting(t.Length, t.FewestSeconds) is var length && length == t.Length ? t : t with { Length = length })];
        Attacks = [.. own.Attacks.Select(a => tempo.Lasting(a.Length, a.FewestSeconds) is var length && length == a.Length ? a : a with { Length = length })];
        Reactions = own.Reactions;
        (techniqueIndex, attackIndex, reactionIndex, listed) = (own.techniqueIndex, own.attackIndex, own.reactionIndex, own.listed);
    }

    /// <summary>Changes whenever a file of the library changes.</summary>
    public string Version { get; }

    public StanceTable Stances { get; }

    public Settle Settle { get; }

    /// <summary>What holds and grips ask while they last.</summary>
    public HoldTable Holds { get; init; } = HoldTable.Empty;

    /// <summary>Kinds of things that stand on a floor, and what may be done with them.</summary>
    public ThingTable Things { get; init; } = ThingTable.Empty;

    /// <summary>Kinds of props that are held in the hand.</summary>
    public PropTable Props { get; init; } = PropTable.Empty;

    /// <summary>How people fight.</summary>
    public IReadOnlyList<Manner> Manners { get; init; } = [];

    /// <summary>Words for whole fights.</summary>
    public IReadOnlyList<Style> Styles { get; init; } = [];

    /// <summary>Attacks that go together.</summary>
    public IReadOnlyList<Combination> Combinations { get; init; } = [];

    /// <summary>How people write of these records.</summary>
    public Notebook Notebook { get; init; } = Notebook.Empty;

    public FixedList<Technique> Techniques { get; }

    public FixedList<Attack> Attacks { get; }

    public FixedList<Reaction> Reactions { get; }

    /// <summary>
    /// The library as it is at a tempo: whatever its own counts leave less than its fewest seconds lasts longer, and so do the settings that are
    /// half counts. What one tempo has made longer another makes from its own counts again.
    /// </summary>
    public Book At(Tempo tempo) => Own.atTempo.GetOrAdd(tempo, t => new Book(Own, t));

    /// <summary>The library as its files say it, at no tempo.</summary>
    public Book Own { get; }

    /// <summary>Position in <see cref="Techniques"/>, or −1 when the id is unknown.</summary>
    public int TechniqueIndex(string id) => techniqueIndex.GetValueOrDefault(id, -1);

    /// <summary>Position in <see cref="Attacks"/>, or −1 when the id is unknown.</summary>
    public int AttackIndex(string id) => attackIndex.GetValueOrDefault(id, -1);

    /// <summary>Position in <see cref="Reactions"/>, or −1 when the id is unknown.</summary>
    public int ReactionIndex(string id) => reactionIndex.GetValueOrDefault(id, -1);

    /// <summary>The manner of a performer; null where they have none, or one that the library does not know.</summary>
    public Manner? MannerOf(Performer performer) => performer.Manner is { } id ? Manners.FirstOrDefault(m => string.Equals(m.Id, id, StringComparison.Ordinal)) : null;

    public Technique Technique(string id) => Techniques[techniqueIndex[id]];

    public Attack Attack(string id) => Attacks[attackIndex[id]];

    public Reaction Reaction(string id) => Reactions[reactionIndex[id]];

    /// <summary>A technique lists a reaction among those that suit it; both by position.</summary>
    public bool Lists(int technique, int reaction) => listed[(technique * Reactions.Count) + reaction];

    private bool[] Listed()
    {
        var lists = new bool[Techniques.Count * Reactions.Count];
        for (var t = 0; t < Techniques.Count; t++)
        {
            foreach (var id in Techniques[t].Reactions)
            {
                if (reactionIndex.TryGetValue(id, out var reaction))
                {
                    lists[(t * Reactions.Count) + reaction] = true;
                }
            }
        }

        return lists;
    }

    private static Dictionary<string, int> Index(IEnumerable<string> ids) =>
        ids.Select((id, index) => (id, index)).ToDictionary(p => p.id, p => p.index, StringComparer.Ordinal);
}

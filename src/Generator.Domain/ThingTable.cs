namespace Generator.Domain;

/// <summary>The kinds of things that a library knows, and the terms on which they are used.</summary>
public sealed record ThingTable(IReadOnlyList<ThingKind> Kinds, IReadOnlyList<ThingTerms> Terms)
{
    /// <summary>No kinds at all.</summary>
    public static readonly ThingTable Empty = new([], []);

    /// <summary>The kind that goes by a word; null for none.</summary>
    public ThingKind? Find(string word) => Kinds.FirstOrDefault(k => k.GoesBy(word));

    /// <summary>The terms of a use; null where the library has none.</summary>
    public ThingTerms? Of(ThingUse use) => Terms.FirstOrDefault(t => t.Use == use);

    /// <summary>How high a thing is: what the brief says, or what is usual for its kind; null where neither tells.</summary>
    public Centimetres? HeightOf(Obstacle thing) => thing.Height ?? (thing.Kind is { } kind ? Find(kind)?.Height : null);

    /// <summary>A thing may be used in a way: its kind allows it, it is rated and padded where it must be, and neither too low nor too high.</summary>
    public bool Allows(Obstacle thing, ThingUse use) =>
        thing.Kind is { } kind && Find(kind) is { } known && known.Uses.Contains(use) && Of(use) is { } terms
        && (thing.Rated || !terms.Rated) && (thing.Padded || !terms.Padded)
        && HeightOf(thing) is { } height && height >= terms.Least && height <= terms.Most;
}

namespace Generator.Domain;

/// <summary>The kinds of props that a library knows.</summary>
public sealed record PropTable(IReadOnlyList<PropKind> Kinds)
{
    /// <summary>No kinds at all.</summary>
    public static readonly PropTable Empty = new([]);

    /// <summary>The kind that goes by a word; null for none.</summary>
    public PropKind? Find(string word) => Kinds.FirstOrDefault(k => k.GoesBy(word));
}

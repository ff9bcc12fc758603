namespace Generator.Domain;

/// <summary>A kind of thing that stands on a floor: a table, a wall, a rail.</summary>
/// <param name="Id">The word that a brief writes.</param>
/// <param name="Name">What people call it, with its article: "a table".</param>
/// <param name="Uses">What may be done with it.</param>
/// <param name="Height">How high it usually is.</param>
/// <param name="Safety">What is done so that nobody is hurt by it.</param>
/// <param name="Source">Where the height is from, or "common practice, no source".</param>
public sealed record ThingKind(string Id, string Name, IReadOnlyList<ThingUse> Uses, Centimetres Height, string Safety, string Source)
{
    /// <summary>Other words that a brief may write.</summary>
    public IReadOnlyList<string> Aliases { get; init; } = [];

    /// <summary>How long it usually is, where nobody says it.</summary>
    public Centimetres Long { get; init; } = new(100);

    /// <summary>How deep it usually is, where nobody says it.</summary>
    public Centimetres Deep { get; init; } = new(60);

    /// <summary>This is its id or one of its other words.</summary>
    public bool GoesBy(string word) => string.Equals(Id, word, StringComparison.OrdinalIgnoreCase) || Aliases.Contains(word, StringComparer.OrdinalIgnoreCase);
}

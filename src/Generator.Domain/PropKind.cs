namespace Generator.Domain;

/// <summary>A kind of prop that is held in the hand: a stick, a tray, a rubber knife.</summary>
/// <param name="Id">The word that a brief writes.</param>
/// <param name="Name">What people call it, with its article: "a stick".</param>
/// <param name="Uses">What may be done with it.</param>
/// <param name="Length">How far it reaches beyond the hand.</param>
/// <param name="Hands">1 or 2 hands hold it.</param>
/// <param name="Safety">What is done so that nobody is hurt by it.</param>
/// <param name="Source">Where length and terms are from, or "common practice, no source".</param>
public sealed record PropKind(string Id, string Name, IReadOnlyList<PropUse> Uses, Centimetres Length, int Hands, string Safety, string Source)
{
    /// <summary>Other words that a brief may write.</summary>
    public IReadOnlyList<string> Aliases { get; init; } = [];

    /// <summary>It keeps its shape; cloth does not.</summary>
    public bool Rigid { get; init; } = true;

    /// <summary>Nobody holds it out: it hangs from the hand, unless a move is done with it.</summary>
    public bool Hangs { get; init; }

    /// <summary>What a picture shows of it: outlines that are filled, or lines of two points. None is a plain stick.</summary>
    public IReadOnlyList<IReadOnlyList<PropPoint>> Drawn { get; init; } = [];

    /// <summary>It is made to break, and is used once.</summary>
    public bool Breakaway { get; init; }

    /// <summary>Who checks it before the call.</summary>
    public required string CheckedBy { get; init; }

    /// <summary>What is looked at then.</summary>
    public required string Check { get; init; }

    /// <summary>This is its id or one of its other words.</summary>
    public bool GoesBy(string word) => string.Equals(Id, word, StringComparison.OrdinalIgnoreCase) || Aliases.Contains(word, StringComparer.OrdinalIgnoreCase);
}

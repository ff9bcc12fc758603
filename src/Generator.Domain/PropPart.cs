namespace Generator.Domain;

/// <summary>A prop of a brief, and where it is before the first count: in somebody's hand, or on the floor.</summary>
/// <param name="Name">What people call this one.</param>
/// <param name="Kind">Id of its kind in the library.</param>
public sealed record PropPart(string Name, string Kind)
{
    /// <summary>Most props in one fight.</summary>
    public const int Most = 12;

    /// <summary>The name in a sentence: "the stick".</summary>
    public string InWords => InSentence.Of(Name);

    /// <summary>Number of the attacker who holds it, −1 for the hero; null where it lies on the floor.</summary>
    public int? With { get; init; }

    /// <summary>The hand that holds it; of no meaning where it lies.</summary>
    public PropHand Hand { get; init; } = PropHand.Right;

    /// <summary>Where it lies, from the corner between 6 and 9; of no meaning where it is held.</summary>
    public Centimetres X { get; init; }

    public Centimetres Y { get; init; }
}

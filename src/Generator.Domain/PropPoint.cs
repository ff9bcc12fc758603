namespace Generator.Domain;

/// <summary>A point of the picture of a prop, as shares of how far it reaches beyond the hand.</summary>
/// <param name="Along">0 in the hand, 1 at its far end; below 0 behind the hand.</param>
/// <param name="Aside">To one side of that line; below 0 to the other.</param>
public readonly record struct PropPoint(decimal Along, decimal Aside);

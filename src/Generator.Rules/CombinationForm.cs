namespace Generator.Rules;

/// <summary>A combination as somebody throws it who stands with one foot in front.</summary>
/// <param name="Number">Of the combination, in the order of the book.</param>
/// <param name="Attacks">Its attacks, by their position in the book.</param>
/// <param name="Gap">Half counts from one contact to the next at most, at the tempo of the scene.</param>
public sealed record CombinationForm(int Number, IReadOnlyList<int> Attacks, int Gap);

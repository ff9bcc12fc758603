using Generator.Rules.Replaying;

namespace Generator.Paperwork.Teaching;

/// <summary>A teachable run of moves. The next phrase picks up from the last move of the one before.</summary>
/// <param name="Number">From 1.</param>
/// <param name="First">Number of its first move, from 1.</param>
/// <param name="Last">Number of its last move; the first move of the next phrase.</param>
public readonly record struct Phrase(int Number, int First, int Last)
{
    /// <summary>Fewest and most moves in a phrase. Common practice, no source.</summary>
    public const int Fewest = 3;

    public const int Most = 7;

    /// <summary>The length that is preferred when the carry-over is the same.</summary>
    public const int Preferred = 5;

    /// <summary>Its moves.</summary>
    /// <param name="steps">Of the whole routine.</param>
    public IReadOnlyList<Step> Of(IReadOnlyList<Step> steps) => [.. steps.Skip(First - 1).Take(Moves)];

    /// <summary>Half count in which its first move starts, and that in which everything of it is over.</summary>
    /// <param name="steps">Of the whole routine.</param>
    public (int From, int To) SpanOf(IReadOnlyList<Step> steps) => (steps[First - 1].Start, Of(steps).Max(s => s.Over));

    /// <summary>How many moves it has.</summary>
    public int Moves => Last - First + 1;
}

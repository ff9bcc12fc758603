namespace Generator.Solver.Revising;

/// <summary>What re-teaching costs. Common practice, no source: a changed order of exchanges is harder to unlearn than a changed technique, that harder than a count.</summary>
public sealed record TeachingWeights
{
    /// <summary>A performer does something at another count, or goes another way to it. Default 1.</summary>
    public int Count { get; init; } = 1;

    /// <summary>A performer does something else in the same place. Default 4.</summary>
    public int Technique { get; init; } = 4;

    /// <summary>A move is new, gone, or another attacker's. Default 10.</summary>
    public int Order { get; init; } = 10;
}

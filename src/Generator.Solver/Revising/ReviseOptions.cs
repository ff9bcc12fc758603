namespace Generator.Solver.Revising;

/// <summary>How to search for a revision.</summary>
public sealed record ReviseOptions
{
    /// <summary>For the part of the search that leaves something to chance. Default 1.</summary>
    public int Seed { get; init; } = 1;

    /// <summary>How long to search at most. Default 15 s.</summary>
    public TimeSpan Time { get; init; } = TimeSpan.FromSeconds(15);

    /// <summary>What re-teaching costs.</summary>
    public TeachingWeights Weights { get; init; } = new();
}

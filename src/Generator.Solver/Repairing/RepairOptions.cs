namespace Generator.Solver.Repairing;

/// <summary>How to search for a repair.</summary>
public sealed record RepairOptions
{
    /// <summary>For the part of the search that leaves something to chance. Default 1.</summary>
    public int Seed { get; init; } = 1;

    /// <summary>How long to search at most. Default 10 s.</summary>
    public TimeSpan Time { get; init; } = TimeSpan.FromSeconds(10);

    /// <summary>Runs of moves that stay as they are: first and last, from 0.</summary>
    public IReadOnlyList<(int First, int Last)> Keep { get; init; } = [];
}

using Generator.Solver.Reworking;

namespace Generator.Solver.Revising;

/// <summary>What came of a revision.</summary>
public sealed record ReviseResult
{
    /// <summary>The revised routine; null when none was found in time.</summary>
    public Reworked? Revised { get; init; }

    /// <summary>Who learns what anew; null without a routine.</summary>
    public Reteaching? Teaching { get; init; }

    /// <summary>Positions in the taught routine of the moves that were taken over, in order: those of everybody who is still in it.</summary>
    public IReadOnlyList<int> Taken { get; init; } = [];

    /// <summary>Moves of attackers who are no longer in it.</summary>
    public int Gone { get; init; }

    /// <summary>Everything smaller was tried near the faults; else time ended the search.</summary>
    public bool SmallerTried { get; init; }

    /// <summary>Statements of the brief that no routine can satisfy together; empty unless that is so.</summary>
    public IReadOnlyList<string> Clash { get; init; } = [];

    public TimeSpan Elapsed { get; init; }
}

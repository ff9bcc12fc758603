using Generator.Solver.Reworking;

namespace Generator.Solver.Repairing;

/// <summary>What came of a repair.</summary>
public sealed record RepairResult
{
    /// <summary>The repaired routine; null when none was found in time.</summary>
    public Reworked? Repaired { get; init; }

    /// <summary>Nothing was unsafe or broken, so nothing changed.</summary>
    public bool WasClean { get; init; }

    /// <summary>No repair changes fewer moves: proven, as none does or as many are wrong by what they are.</summary>
    public bool FewestProven { get; init; }

    /// <summary>Every smaller number of changes was tried near the faults, without success.</summary>
    public bool SmallerTried { get; init; }

    /// <summary>Statements of the brief that no routine can satisfy together; empty unless that is so.</summary>
    public IReadOnlyList<string> Clash { get; init; } = [];

    public TimeSpan Elapsed { get; init; }
}

namespace Generator.Solver.Filling;

/// <summary>What a technique is used for in one row; the solver's counterpart of the replay's move modes.</summary>
public enum UseKind
{
    /// <summary>The row stays empty; only behind the last move.</summary>
    Idle,
    NoTarget,
    Answer,
    OpensOnWalkIn,
    EscapesGrab,
    FollowUp,
}

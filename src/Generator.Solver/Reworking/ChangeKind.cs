namespace Generator.Solver.Reworking;

/// <summary>What became of a move when a routine was changed.</summary>
public enum ChangeKind
{
    /// <summary>As it was, count and all.</summary>
    Kept,

    /// <summary>The same people do the same, at another count, with another linger or cue, or from another bearing.</summary>
    Shifted,

    /// <summary>Another move stands in its place.</summary>
    Changed,

    /// <summary>It was not there before.</summary>
    Added,

    /// <summary>It is no more.</summary>
    Dropped,
}

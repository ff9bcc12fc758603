namespace Generator.Solver.Questions;

/// <summary>How a search ended.</summary>
public enum DraftStatus
{
    /// <summary>There is a routine, and it passed the audit.</summary>
    Found,

    /// <summary>No routine can satisfy the brief, confirmed by a second configuration.</summary>
    Impossible,

    /// <summary>Time ran out, or the search was stopped, before there was a routine.</summary>
    OutOfTime,
}

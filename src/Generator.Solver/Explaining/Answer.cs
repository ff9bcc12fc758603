namespace Generator.Solver.Explaining;

/// <summary>What is known of some statements together.</summary>
public enum Answer
{
    /// <summary>They hold together: there is a routine, and the audit found nothing unsafe or broken in it.</summary>
    Solvable,

    /// <summary>They cannot hold together: proven.</summary>
    Impossible,

    /// <summary>Neither was shown in the time given.</summary>
    Unknown,
}

namespace Generator.Solver.Alternatives;

/// <summary>What makes one set more diverse than another.</summary>
public enum DiversityGoal
{
    /// <summary>The smallest distance between two of the set is as great as can be; then their sum.</summary>
    Smallest,

    /// <summary>The sum of the distances between all of the set is as great as can be; then the smallest.</summary>
    Sum,
}

namespace Generator.Solver.Engine;

/// <summary>How a solve ended.</summary>
public enum CpAnswer
{
    /// <summary>Nothing is known: time ran out or the search was stopped.</summary>
    Unknown,

    /// <summary>There is no solution.</summary>
    Infeasible,

    /// <summary>A solution, perhaps not the best.</summary>
    Feasible,

    /// <summary>The best solution (or, without objective, a solution).</summary>
    Optimal,
}

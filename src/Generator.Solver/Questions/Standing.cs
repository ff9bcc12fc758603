namespace Generator.Solver.Questions;

/// <summary>What is known of the points of a routine.</summary>
public enum Standing
{
    /// <summary>The best found; a better one may exist.</summary>
    BestFound,

    /// <summary>Proven: no routine of this brief has fewer points.</summary>
    ProvenBest,

    /// <summary>Zero points.</summary>
    Perfect,
}

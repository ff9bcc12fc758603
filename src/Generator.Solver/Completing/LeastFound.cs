using Generator.Solver.Constructing;

namespace Generator.Solver.Completing;

/// <summary>A whole routine as a filling of a sketch.</summary>
/// <param name="Whole">Which rows fill which moves, and what that costs.</param>
/// <param name="Finish">The routine.</param>
internal sealed record LeastFound(Beginning Whole, Finish Finish);

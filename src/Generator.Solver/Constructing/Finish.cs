namespace Generator.Solver.Constructing;

/// <summary>A whole routine as the search found it.</summary>
/// <param name="Node">Its last move.</param>
/// <param name="LaterReturns">What was decided at the end about earlier moves.</param>
/// <param name="Points">Its points, those of the end included.</param>
internal sealed record Finish(Node Node, LaterReturn[] LaterReturns, int Points);

namespace Generator.Solver.Constructing;

/// <summary>A whole routine as the search found it.</summary>
/// <param name="Node">Its last move.</param>
/// <param name="LaterReturns">What was decided at the end about earlier moves.</param>
/// <param name="Points">Its points, those of the end included.</param>
/// <param name="Toll">What the search tries to keep small: the points, or points and changes where an older routine is followed.</param>
internal sealed record Finish(Node Node, LaterReturn[] LaterReturns, int Points, int Toll);

namespace Generator.Solver.Revising;

/// <summary>What one performer has to learn anew.</summary>
/// <param name="Name">The performer.</param>
/// <param name="Moves">Moves in which they do something else, or that are new to them.</param>
/// <param name="Gone">Moves of theirs that are no more.</param>
/// <param name="Counts">Moves that they do as before, but sooner or later after the move before.</param>
/// <param name="Ways">Moves to which they go, or in which they travel, another way, since marks have moved.</param>
/// <param name="Cost">By the weights.</param>
public sealed record Relearned(string Name, int Moves, int Gone, int Counts, int Ways, int Cost);

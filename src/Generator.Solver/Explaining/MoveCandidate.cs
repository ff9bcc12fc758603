using Generator.Domain;

namespace Generator.Solver.Explaining;

/// <summary>What would come of another technique in the place of a move, with the reaction that suits best.</summary>
/// <param name="Technique">The other technique.</param>
/// <param name="Reaction">The reaction that was tried with it; null for a technique without one.</param>
/// <param name="Against">The first thing that forbids it; null when nothing does.</param>
/// <param name="Points">Points more than the routine as it is; 0 where something forbids it.</param>
public sealed record MoveCandidate(Technique Technique, string? Reaction, Finding? Against, int Points);

namespace Generator.Solver.Revising;

/// <summary>Moves in a row that stay as they were taught, at the same distance from one another.</summary>
/// <param name="First">Position of the first in the new routine, from 0.</param>
/// <param name="Last">Position of the last.</param>
/// <param name="WasFirst">Position of the first in the old routine.</param>
/// <param name="Shift">Half counts by which the whole run comes later; negative for sooner.</param>
public sealed record UnchangedRun(int First, int Last, int WasFirst, int Shift);

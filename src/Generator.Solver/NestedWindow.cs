namespace Generator.Solver;

/// <summary>When a moment that lies within another may begin.</summary>
/// <param name="Moment">Its number in the brief, from 0.</param>
/// <param name="Earliest">First half count.</param>
/// <param name="Latest">Last half count.</param>
internal sealed record NestedWindow(int Moment, int Earliest, int Latest);

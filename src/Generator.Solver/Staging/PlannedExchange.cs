namespace Generator.Solver.Staging;

/// <summary>One exchange of a plan.</summary>
/// <param name="Attacker">Who comes.</param>
/// <param name="Moves">For how many moves.</param>
/// <param name="PutsOut">Whether it ends with them out.</param>
public sealed record PlannedExchange(int Attacker, int Moves, bool PutsOut);

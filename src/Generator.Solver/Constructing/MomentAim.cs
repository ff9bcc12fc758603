namespace Generator.Solver.Constructing;

/// <summary>A hero moment to be reached.</summary>
/// <param name="Steps">Its moves in order.</param>
/// <param name="Earliest">First half count at which the first may start.</param>
/// <param name="Latest">Last half count at which the first may start.</param>
/// <param name="Due">Half count from which it is owed.</param>
internal sealed record MomentAim(MomentStep[] Steps, int Earliest, int Latest, double Due);

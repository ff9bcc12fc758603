namespace Generator.Solver.Refuting;

/// <summary>What one argument says against a brief, which no routine can therefore satisfy.</summary>
/// <param name="By">The argument.</param>
/// <param name="Reasons">In words, at least one.</param>
internal sealed record Refutation(Argument By, IReadOnlyList<string> Reasons);

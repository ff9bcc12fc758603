using Generator.Domain;

namespace Generator.Solver.Diagnosing;

/// <summary>One change on the way from a routine to its mended form.</summary>
/// <param name="Told">What was changed, in words.</param>
/// <param name="Routine">The routine with it and with all changes before it.</param>
/// <param name="Written">For each of its moves the number that it had as it was written; 0 for one that was put in.</param>
internal sealed record Change(string Told, Routine Routine, IReadOnlyList<int> Written);

using Generator.Domain;
using Generator.Rules.Judging;

namespace Generator.Solver.Alternatives;

/// <summary>One way to do it; nothing in it is unsafe or broken.</summary>
/// <param name="Routine">The routine.</param>
/// <param name="Verdict">What the audit says of it.</param>
/// <param name="Shape">The routine cut at its hero moments.</param>
public sealed record Alternative(Routine Routine, Verdict Verdict, Shape Shape);

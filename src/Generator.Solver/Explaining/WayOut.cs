using Generator.Domain;

namespace Generator.Solver.Explaining;

/// <summary>What would help: everything that has to be given up together.</summary>
/// <param name="Words">In the words of the brief.</param>
/// <param name="Brief">The brief with that given up, which the reader takes when it is written down, and of which a draft has passed the audit.</param>
public sealed record WayOut(IReadOnlyList<string> Words, Brief Brief);

namespace Generator.Solver.Refuting;

/// <summary>One way of showing, without a search, that no routine can satisfy a brief.</summary>
/// <param name="Name">What it counts or follows.</param>
/// <param name="Against">What it says against a brief, in words; nothing where it finds nothing, which proves nothing.</param>
internal sealed record Argument(string Name, Func<Workings, IEnumerable<string>> Against);

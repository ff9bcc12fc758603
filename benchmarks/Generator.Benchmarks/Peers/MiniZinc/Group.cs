namespace Generator.Benchmarks.Peers.MiniZinc;

/// <summary>Literals of which exactly one is true, and the variable that tells which: to a solver with whole domains one variable instead of hundreds.</summary>
/// <param name="Number">Number of the variable in the model.</param>
/// <param name="Literals">Numbers of the literals' variables; −1 where one is the constant that never holds.</param>
internal sealed record Group(int Number, IReadOnlyList<int> Literals);

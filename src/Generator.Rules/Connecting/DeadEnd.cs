namespace Generator.Rules.Connecting;

/// <summary>A situation from which the library knows no way on.</summary>
/// <param name="Form">How the hero is.</param>
/// <param name="Lacks">What is lacking, in words.</param>
/// <param name="WaysIn">Moves that lead there.</param>
public sealed record DeadEnd(HeroForm Form, string Lacks, IReadOnlyList<string> WaysIn);

namespace Generator.Rehearsal.Serving;

/// <summary>What filling a sketch ended with.</summary>
/// <param name="Json">The answer of <c>complete --json</c>; empty where there is none.</param>
/// <param name="Error">What it said instead.</param>
public sealed record Filled(string Json, string Error);

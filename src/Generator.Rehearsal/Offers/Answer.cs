namespace Generator.Rehearsal.Offers;

/// <summary>What a question ended with.</summary>
/// <param name="Json">The answer of the command as JSON; empty where there is none.</param>
/// <param name="Error">What it said instead.</param>
public sealed record Answer(string Json, string Error);

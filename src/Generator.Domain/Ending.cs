namespace Generator.Domain;

/// <summary>How the routine is to end.</summary>
/// <param name="Out">Names of the attackers who must be out at the end.</param>
/// <param name="Last">Name of the one who goes out last; null when it does not matter.</param>
public sealed record Ending(IReadOnlyList<string> Out, string? Last);

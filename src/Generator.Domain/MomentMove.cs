namespace Generator.Domain;

/// <summary>One move of a hero moment; what is null is free. Technique and attack are ids with or without side.</summary>
public sealed record MomentMove(string Technique, string? Attacker, string? Attack, string? Reaction);

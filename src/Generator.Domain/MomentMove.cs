namespace Generator.Domain;

/// <summary>One move of a hero moment; what is null is free. Technique and attack are ids with or without side.</summary>
/// <param name="Technique">What the hero does.</param>
/// <param name="Attacker">Name of the attacker.</param>
/// <param name="Attack">What the attacker throws; <see cref="NoAttack"/> where the move must follow up without one.</param>
/// <param name="Reaction">How the attacker takes it.</param>
public sealed record MomentMove(string Technique, string? Attacker, string? Attack, string? Reaction)
{
    /// <summary>Stands where an attack's id would, and in files, for "no attack".</summary>
    public const string NoAttack = "none";

    /// <summary>The move must follow up without an attack.</summary>
    public bool WantsNoAttack => string.Equals(Attack, NoAttack, StringComparison.Ordinal);
}

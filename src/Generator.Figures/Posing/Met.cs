using Generator.Domain;

namespace Generator.Figures.Posing;

/// <summary>What a technique meets in a fight, where that is known; whatever is null is drawn as the record usually has it.</summary>
/// <param name="Attack">The attack that it answers.</param>
/// <param name="Posture">How it finds the other one.</param>
/// <param name="Reaction">How it is sold.</param>
public readonly record struct Met(Attack? Attack, Posture? Posture, Reaction? Reaction);

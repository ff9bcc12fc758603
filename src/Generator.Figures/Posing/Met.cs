using Generator.Domain;

namespace Generator.Figures.Posing;

/// <summary>What a technique meets in a fight, where that is known; whatever is null is drawn as the record usually has it.</summary>
/// <param name="Attack">The attack that it answers.</param>
/// <param name="Posture">How it finds the other one.</param>
/// <param name="Reaction">How it is sold.</param>
public readonly record struct Met(Attack? Attack, Posture? Posture, Reaction? Reaction)
{
    /// <summary>Of a technique for two: how far to the hero's left of the first the second is, in degrees, below 0 to the right; null for the middle of what the record allows.</summary>
    public int? SecondAt { get; init; }

    /// <summary>How it finds the second.</summary>
    public Posture? SecondPosture { get; init; }

    /// <summary>Who holds what up to the contact; null for no more than the records say.</summary>
    public IReadOnlyList<Holding>? Held { get; init; }

    /// <summary>Who holds what afterwards.</summary>
    public IReadOnlyList<Holding>? Left { get; init; }
}

namespace Generator.Domain;

/// <summary>A change of stance between two moves.</summary>
/// <param name="To">Where it leads.</param>
/// <param name="Trained">Time for a trained or stunt performer.</param>
/// <param name="Novice">Time for a novice, never shorter.</param>
public sealed record StanceChange(Stance To, HalfCounts Trained, HalfCounts Novice)
{
    /// <summary>What it asks of each part of the body beyond the two stances: getting up, turning over.</summary>
    public Load Load { get; init; }
}

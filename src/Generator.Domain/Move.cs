namespace Generator.Domain;

/// <summary>One row of a routine. Ids refer to the library, resolved when the file was read.</summary>
public sealed record Move
{
    /// <summary>When the technique starts.</summary>
    public required HalfCounts Start { get; init; }

    /// <summary>The ally does it, not the hero.</summary>
    public bool ByAlly { get; init; }

    /// <summary>Number of the attacker in the brief, from 0; null for a pause without one.</summary>
    public int? Attacker { get; init; }

    /// <summary>Where the attacker comes back from, when it is not where they were left.</summary>
    public Bearing? From { get; init; }

    public Cue Cue { get; init; }

    /// <summary>Id of the attack that opens the exchange; null for a follow-up.</summary>
    public string? Attack { get; init; }

    /// <summary>Id of the technique; null for an attack that nothing answers.</summary>
    public string? Technique { get; init; }

    public string? Reaction { get; init; }

    /// <summary>What the blow hurts, and until when: of the hero where the technique is a setback, else of its target. Null for nothing.</summary>
    public Hurt? Hurts { get; init; }

    /// <summary>Number of the brief's mark to which a travel move leads, from 0; null for every other move.</summary>
    public int? To { get; init; }

    /// <summary>
    /// The stance to which the hero changes in the gap before the technique; null where they stay as they are, or where nobody says and the
    /// choice is the soonest reached.
    /// </summary>
    public Stance? Stance { get; init; }

    /// <summary>Added to the attacker's return.</summary>
    public HalfCounts Linger { get; init; }

    public string Note { get; init; } = string.Empty;
}

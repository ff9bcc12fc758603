namespace Generator.Domain.Sketches;

/// <summary>One move of a sketch. What is null is open; nothing is ever judged against a value that nobody wrote.</summary>
public sealed record SketchMove
{
    /// <summary>Line of the notes or rows, from 1.</summary>
    public required int Line { get; init; }

    /// <inheritdoc cref="Move.ByAlly"/>
    public bool ByAlly { get; init; }

    /// <summary>Number of the attacker in the brief, from 0.</summary>
    public int? Attacker { get; init; }

    /// <summary>The attacker does nothing of their own: a follow-up.</summary>
    public bool FollowsUp { get; init; }

    public SketchCell? Attack { get; init; }

    /// <summary>Only the attack is written: the hero suffers it, and what it does to them is open.</summary>
    public bool IsSuffered { get; init; }

    public SketchCell? Technique { get; init; }

    public SketchCell? Reaction { get; init; }

    /// <summary>A cell of it must stay as it is.</summary>
    public bool IsLocked => new[] { Attack, Technique, Reaction }.Any(c => c?.Firmness == Firmness.Fixed);

    /// <summary>The move starts no sooner than the first and no later than the second; null where no count is said.</summary>
    public (HalfCounts First, HalfCounts Last)? Count { get; init; }

    /// <summary>Clock position from which the attacker comes.</summary>
    public Bearing? From { get; init; }

    /// <inheritdoc cref="Move.Hurts"/>
    public Hurt? Hurts { get; init; }

    /// <inheritdoc cref="Move.To"/>
    public int? To { get; init; }

    /// <summary>A remark of the writer's; stays with the move.</summary>
    public string Note { get; init; } = string.Empty;

    /// <summary>As a routine has it; a filling works it out anew, and so it does with linger and stance.</summary>
    public Cue Cue { get; init; }

    /// <inheritdoc cref="Move.Linger"/>
    public HalfCounts Linger { get; init; }

    /// <inheritdoc cref="Move.Stance"/>
    public Stance? Stance { get; init; }

    /// <summary>As many moves as may stand in this place beside what is said; 0 for a move that is said.</summary>
    public int Open { get; init; }

    /// <summary>A place where further moves may stand ("…").</summary>
    public bool IsGap => Open > 0;
}

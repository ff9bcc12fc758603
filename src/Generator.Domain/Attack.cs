namespace Generator.Domain;

/// <summary>What an attacker throws to open an exchange, for one side; the other side is its mirror.</summary>
public sealed record Attack
{
    public required string Id { get; init; }

    public required string BaseId { get; init; }

    public required string Name { get; init; }

    public IReadOnlyList<string> Aliases { get; init; } = [];

    /// <summary>The attacker's own side; null when it has none.</summary>
    public Side? Side { get; init; }

    /// <summary>The striking limb in words.</summary>
    public string LimbWords { get; init; } = string.Empty;

    public required AttackLine Line { get; init; }

    /// <summary>Hero's levels that it suits.</summary>
    public required StanceSet HeroStances { get; init; }

    /// <summary>Where the attacker must stand relative to the hero's facing.</summary>
    public required Window From { get; init; }

    /// <summary>Distance from which it begins.</summary>
    public Centimetres StartDistance { get; init; }

    /// <summary>Distance band at contact, of the attacker's limb.</summary>
    public required Band Contact { get; init; }

    public required HalfCounts Length { get; init; }

    public required decimal FewestSeconds { get; init; }

    /// <summary>How the attacker comes in: step, leap, rush, walk, drop.</summary>
    public string Arrives { get; init; } = string.Empty;

    /// <summary>A grab: what becomes of the hero's hands once it closes; null leaves the hand as it was.</summary>
    public HandEnd? GripsLeft { get; init; }

    public HandEnd? GripsRight { get; init; }

    public Bound? GripsBound { get; init; }

    /// <summary>Stance into which the grip pulls a standing hero.</summary>
    public Stance? GripsStance { get; init; }

    /// <summary>Non-contact: the longer-armed partner's limb sets the distance.</summary>
    public bool NonContact { get; init; }

    /// <summary>What the body must allow, for limits: <c>left-hand</c>, <c>right-leg</c>, <c>jump</c> …</summary>
    public IReadOnlyList<string> Demands { get; init; } = [];

    /// <summary>What it asks of each part of the attacker's body, a block that stops the limb included.</summary>
    public Load Load { get; init; }

    /// <summary>The posture it leaves the attacker in when nothing answers it and it finds no target.</summary>
    public Posture MissPosture { get; init; }

    /// <summary>How long the attacker then stays open.</summary>
    public decimal MissOpenSeconds { get; init; }

    /// <summary>What it leaves open.</summary>
    public string LeavesOpen { get; init; } = string.Empty;

    public string Hazard { get; init; } = string.Empty;

    public string Safety { get; init; } = string.Empty;

    /// <summary>The thing that it needs on the floor; null for none.</summary>
    public ThingNeed? Uses { get; init; }

    /// <summary>The prop that it is done with; null for none.</summary>
    public PropNeed? Prop { get; init; }

    public bool IsGrab => Line.IsGrab;

    /// <summary>What it is to an audience.</summary>
    public AttackKind Kind => Line.Kind switch
    {
        LineKind.HighStraight or LineKind.HighRising or LineKind.MiddleStraight or LineKind.KneeStraight or LineKind.PropStraight => AttackKind.Punch,
        LineKind.HighRound or LineKind.HighOver or LineKind.KneeRound or LineKind.PropOver or LineKind.PropRoundHigh or LineKind.PropRound or LineKind.PropSlash => AttackKind.Swing,
        >= LineKind.KickMiddleStraight and <= LineKind.KickAtFallen => AttackKind.Kick,
        >= LineKind.RushLow and <= LineKind.RushRear => AttackKind.Rush,
        LineKind.WalkIn => AttackKind.WalkIn,
        LineKind.GrabThroatRear or LineKind.GrabBodyRear or LineKind.GrabHairRear or LineKind.GrabShouldersRear or LineKind.GrabBodyRearUnder or LineKind.GrabWristsRear => AttackKind.RearGrab,
        _ => AttackKind.Grab,
    };

    /// <summary>Thrown by somebody who is still on the knee on which they opened, at a hero on theirs.</summary>
    public bool FromKnee => Line.IsFromKnee;

    /// <summary>No blow: the hero may open with a technique that takes a ready attacker.</summary>
    public bool IsWalkIn => Line.Kind == LineKind.WalkIn;

    /// <summary>This is its id, with or without side.</summary>
    public bool GoesBy(string id) => string.Equals(Id, id, StringComparison.Ordinal) || string.Equals(BaseId, id, StringComparison.Ordinal);
}

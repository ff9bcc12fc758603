namespace Generator.Domain;

/// <summary>The lead, who works around the mark.</summary>
public sealed record HeroPart : Performer
{
    /// <summary>The lead foot of the opening stance, and the preferred one where either would do; null opens square and prefers left.</summary>
    public Side? Lead { get; init; } = Side.Left;

    /// <summary>The knee on which the hero opens; null opens on both feet.</summary>
    public Side? Kneels { get; init; }

    /// <summary>The opening stance: on a knee, or else left lead, right lead, or square.</summary>
    public Stance OpeningStance => (Kneels, Lead) switch
    {
        (Side.Left, _) => Stance.KneelingLeft,
        (Side.Right, _) => Stance.KneelingRight,
        (_, Side.Left) => Stance.LeftLead,
        (_, Side.Right) => Stance.RightLead,
        _ => Stance.Square,
    };
}

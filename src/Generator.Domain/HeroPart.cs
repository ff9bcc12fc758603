namespace Generator.Domain;

/// <summary>The lead, who works around the mark.</summary>
public sealed record HeroPart : Performer
{
    /// <summary>The lead foot of the opening stance, and the preferred one where either would do; null opens square and prefers left.</summary>
    public Side? Lead { get; init; } = Side.Left;

    /// <summary>The opening stance: left lead, right lead, or square.</summary>
    public Stance OpeningStance => Lead switch
    {
        Side.Left => Stance.LeftLead,
        Side.Right => Stance.RightLead,
        _ => Stance.Square,
    };
}

namespace Generator.Domain;

/// <summary>What makes a technique a travel move: it ends on another mark.</summary>
/// <param name="How">Who makes the hero go.</param>
/// <param name="Heads">Where the other mark must lie, relative to the hero's facing when the technique starts.</param>
/// <param name="Least">Shortest way.</param>
/// <param name="Most">Longest way.</param>
/// <param name="Speed">How fast the hero goes at most, in centimetres a second: the way takes no less time.</param>
/// <param name="Follows">The partner goes along and keeps their place beside the hero; else they stay where they are.</param>
public sealed record Travel(TravelKind How, Window Heads, Centimetres Least, Centimetres Most, int Speed, bool Follows)
{
    /// <summary>The same seen in a mirror.</summary>
    public Travel Mirrored() => this with { Heads = Heads.Mirrored };

    /// <summary>The fewest seconds for a way.</summary>
    public decimal SecondsFor(Centimetres way) => (decimal)way.Value / Speed;
}

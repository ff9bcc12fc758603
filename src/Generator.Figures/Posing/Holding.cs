using Generator.Domain;
using Generator.Figures.Bodies;

namespace Generator.Figures.Posing;

/// <summary>A prop in somebody's hand.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Hand">The holder's own hand.</param>
/// <param name="ByHero">The hero holds it; else the attacker.</param>
public sealed record Holding(PropKind Kind, PropHand Hand, bool ByHero)
{
    /// <summary>How far it reaches beyond the hand; metres.</summary>
    public double Length => Kind.Length.Value / 100.0;

    /// <summary>The hand in front, from which it reaches.</summary>
    public Side Front => Hand == PropHand.Left ? Side.Left : Side.Right;

    /// <summary>From the hand to the far end while nothing is done with it; metres.</summary>
    public Vec Carried(Figure body) => Arming.Carried(body, this) * Length;

    /// <summary>The same in a mirror; what both hands hold keeps its front hand there.</summary>
    public Holding Mirrored => this with { Hand = Hand.Mirrored() };

    /// <summary>A record may be done with it.</summary>
    public bool Serves(PropNeed need) => Kind.Uses.Contains(need.Use) && (need.Hand is not { } hand || hand == Hand);
}

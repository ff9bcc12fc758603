using Generator.Domain;
using Generator.Figures.Bodies;

namespace Generator.Figures.Posing;

/// <summary>A prop in a picture.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Hand">Where the hand is that it reaches from, or where it begins if it flies; metres.</param>
/// <param name="Far">Its far end, as far off as it is long.</param>
public sealed record HeldProp(PropKind Kind, Vec Hand, Vec Far)
{
    public HeldProp Mirrored => this with { Hand = Hand.Mirrored, Far = Far.Mirrored };
}

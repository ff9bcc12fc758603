using Generator.Figures.Bodies;

namespace Generator.Figures.Posing;

/// <summary>One picture of a card.</summary>
/// <param name="When">What the instant is called.</param>
/// <param name="Hero">Null in a picture of an attacker alone.</param>
/// <param name="Attacker">Null in a picture of the hero alone.</param>
/// <param name="Missing">How far what is aimed stays short of where it should be; metres.</param>
public sealed record Frame(string When, Figure? Hero, Figure? Attacker, double Missing)
{
    /// <summary>Where they meet.</summary>
    public IReadOnlyList<Mark> Marks { get; init; } = [];

    public Frame Mirrored => this with { Hero = Hero?.Mirrored, Attacker = Attacker?.Mirrored, Marks = [.. Marks.Select(m => m.Mirrored)] };
}

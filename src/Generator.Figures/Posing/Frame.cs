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

    /// <summary>The second attacker of a technique for two; else null.</summary>
    public Figure? Second { get; init; }

    /// <summary>What they have in their hands, or what flies between them.</summary>
    public IReadOnlyList<HeldProp> Props { get; init; } = [];

    /// <summary>From what is aimed to what a planned miss is aimed at, as it really is between the two; metres. Null where nothing is meant to miss.</summary>
    public double? Gap { get; init; }

    /// <summary>The thing of the room with which it is done; else null.</summary>
    public DrawnThing? Thing { get; init; }

    public Frame Mirrored => this with { Hero = Hero?.Mirrored, Attacker = Attacker?.Mirrored, Second = Second?.Mirrored, Marks = [.. Marks.Select(m => m.Mirrored)], Props = [.. Props.Select(p => p.Mirrored)] };
}

namespace Generator.Solver.Explaining;

/// <summary>How near to hand it is to give up something that a brief says.</summary>
public enum Nearness
{
    /// <summary>A wish: the length, the story, a hero moment, who goes out, who comes from where and when.</summary>
    Wished,

    /// <summary>Given with the production: tempo, floor, how many there are.</summary>
    Given,

    /// <summary>What performers can do and what keeps them safe: skill, limits, wardrobe, falls, hits, margins.</summary>
    Performers,
}

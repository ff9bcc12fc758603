namespace Generator.Testing;

/// <summary>Which cells of a routine are taken away.</summary>
public enum Erasing
{
    /// <summary>A share of the cells of every kind.</summary>
    Mixed,

    Attackers,

    Attacks,

    Techniques,

    Reactions,

    Counts,

    /// <summary>A technique that has a side may be done on either.</summary>
    Sides,

    /// <summary>All cells of some moves in a row.</summary>
    Stretch,
}

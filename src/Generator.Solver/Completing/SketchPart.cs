namespace Generator.Solver.Completing;

/// <summary>What of a sketch gives when no routine can have it, cheapest first: fewer of a dearer kind always come before fewer of a cheaper one.</summary>
public enum SketchPart
{
    /// <summary>A wish (<c>?</c>) of any kind.</summary>
    Wish,

    Count,

    /// <summary>From where somebody comes.</summary>
    Place,

    /// <summary>A move is put in that nobody wrote.</summary>
    Added,

    Reaction,

    Side,

    /// <summary>Who is taken on.</summary>
    Attacker,

    Attack,

    Technique,
}

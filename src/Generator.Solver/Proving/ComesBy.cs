namespace Generator.Solver.Proving;

/// <summary>How a move comes upon its target.</summary>
internal enum ComesBy
{
    /// <summary>It has no target.</summary>
    Nobody,

    /// <summary>The target comes with an attack.</summary>
    Attack,

    /// <summary>The target is open, held, or grips the hero.</summary>
    Opening,

    /// <summary>The target is ready again, and comes with no attack.</summary>
    Recovery,
}

namespace Generator.Solver.Proving;

/// <summary>What a move makes of a second attacker.</summary>
internal enum SecondRole
{
    /// <summary>Nobody else is concerned.</summary>
    None,

    /// <summary>Bumped into: off balance.</summary>
    Bumped,

    /// <summary>Taken along: shares the reaction.</summary>
    Taken,
}

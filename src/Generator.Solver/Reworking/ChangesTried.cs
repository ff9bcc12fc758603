namespace Generator.Solver.Reworking;

/// <summary>Which changes of a move are tried.</summary>
internal enum ChangesTried
{
    /// <summary>The same move at another count, with another linger, or from where the attacker was left.</summary>
    Counts,

    /// <summary>As well another technique, reaction or attack in its place and time.</summary>
    Swaps,

    /// <summary>Every other move, in its place, before it, or none.</summary>
    All,
}

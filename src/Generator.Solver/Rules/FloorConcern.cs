namespace Generator.Solver.Rules;

/// <summary>Of which rule of the floor two who come too near to one another are a matter.</summary>
internal enum FloorConcern
{
    /// <summary>Both upright, nobody is sent.</summary>
    Spacing,

    /// <summary>Both upright, one is sent.</summary>
    Lane,

    /// <summary>One lies.</summary>
    Underfoot,
}

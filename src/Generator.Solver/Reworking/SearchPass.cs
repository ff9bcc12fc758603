namespace Generator.Solver.Reworking;

/// <summary>One pass of the search for few changes.</summary>
/// <param name="Tried">Which changes.</param>
/// <param name="First">Old moves before the first fault at which a change is tried; before later faults it may be fewer.</param>
/// <param name="Width">Beginnings with the same number of changes that are followed further.</param>
internal sealed record SearchPass(ChangesTried Tried, int First, int Width)
{
    /// <summary>Moves that stay keep their counts too.</summary>
    public bool IsStrict { get; init; }
}

using Generator.Domain;

namespace Generator.Solver.Questions;

/// <summary>What is known so far during a search.</summary>
/// <param name="Elapsed">Since the search began.</param>
/// <param name="BestPoints">Points of the best routine so far; null while there is none.</param>
/// <param name="Bound">No routine can have fewer points.</param>
/// <param name="Source">Which part of the engine speaks: constructive pass, staging, fill, whole model.</param>
public sealed record DraftProgress(TimeSpan Elapsed, int? BestPoints, int Bound, string Source)
{
    /// <summary>The best routine so far, audited and clean; null while there is none.</summary>
    public Routine? Best { get; init; }
}

namespace Generator.Domain;

/// <summary>A hero moment: one move or a run of consecutive moves that the brief fixes.</summary>
/// <param name="Moves">In order, at least one.</param>
/// <param name="Earliest">The first of them starts no earlier; null for no limit.</param>
/// <param name="Latest">The first of them starts no later; null for no limit.</param>
public sealed record Moment(IReadOnlyList<MomentMove> Moves, HalfCounts? Earliest, HalfCounts? Latest)
{
    /// <summary>Its first move may start then.</summary>
    public bool MayStart(HalfCounts start) => !(start < Earliest) && !(start > Latest);
}

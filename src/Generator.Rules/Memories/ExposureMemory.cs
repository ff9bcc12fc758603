namespace Generator.Rules.Memories;

/// <summary>What exposure remembers. Falls of attackers are kept in their state.</summary>
/// <param name="HeroFalls">Falls of the hero so far.</param>
/// <param name="HeroHeadHits">Head-height hits sold by the hero so far.</param>
/// <param name="HeadHits">Head-height hits sold by each attacker so far.</param>
/// <param name="EffortFrom">Start of the unbroken run of heavy moves, in half counts; null when there is none.</param>
/// <param name="EffortTold">That run has been told already.</param>
public sealed record ExposureMemory(int HeroFalls, int HeroHeadHits, IReadOnlyList<int> HeadHits, int? EffortFrom, bool EffortTold)
{
    /// <summary>The same of the ally, whose head-height hits on attackers are counted with the hero's; null before their first move.</summary>
    public ExposureMemory? Ally { get; init; }
}

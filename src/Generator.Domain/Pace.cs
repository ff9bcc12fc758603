namespace Generator.Domain;

/// <summary>Patience and pauses.</summary>
/// <param name="Patience">How long somebody who could attack may stand waiting.</param>
/// <param name="LongestPause">How long nothing may happen.</param>
/// <param name="Linger">The most that a move may add to an attacker's return.</param>
public sealed record Pace(HalfCounts Patience, HalfCounts LongestPause, HalfCounts Linger)
{
    /// <summary>Patience 4 counts, longest pause 2, linger 6.</summary>
    public static readonly Pace Default = new(HalfCounts.FromCounts(4), HalfCounts.FromCounts(2), HalfCounts.FromCounts(6));

    /// <summary>A pause of more than 6 counts breaks the routine.</summary>
    public static readonly HalfCounts DeadAirBreaks = HalfCounts.FromCounts(6);
}

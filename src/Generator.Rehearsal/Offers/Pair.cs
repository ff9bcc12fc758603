namespace Generator.Rehearsal.Offers;

/// <summary>A move of one fight and the one that stands in its place in another; numbers from 0, −1 where there is none.</summary>
/// <param name="Was">In the one.</param>
/// <param name="Now">In the other.</param>
/// <param name="IsSame">The same is done with the same attacker; its count may be another.</param>
public sealed record Pair(int Was, int Now, bool IsSame);

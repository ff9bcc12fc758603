namespace Generator.Rehearsal.Offers;

/// <summary>What is known of the cause of one finding.</summary>
/// <param name="Under">The finding with which it vanishes, by its place among all; null for one that stands by itself.</param>
/// <param name="Mended">What was changed to mend it and those under it; empty where that is not known.</param>
public sealed record Cause(int? Under, string Mended);

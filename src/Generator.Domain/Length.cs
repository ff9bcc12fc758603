namespace Generator.Domain;

/// <summary>How long the routine is to be: in counts, in moves, or both.</summary>
/// <param name="Counts">Counts from the first count to the end of the last move, 4 to 2000; null leaves it free.</param>
/// <param name="Moves">Number of moves, 1 to 500; null leaves it free.</param>
/// <param name="Tolerance">Counts by which it may be shorter or longer (default 4); with moves alone, that many moves (default 1).</param>
public sealed record Length(int? Counts, int? Moves, int Tolerance);

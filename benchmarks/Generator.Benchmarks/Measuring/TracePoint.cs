namespace Generator.Benchmarks.Measuring;

/// <summary>A better routine during a search.</summary>
/// <param name="Wall">Milliseconds since the brief was in hand.</param>
/// <param name="Processor">Milliseconds of processor time of all threads since the brief was in hand.</param>
/// <param name="Points">Points of the routine.</param>
internal sealed record TracePoint(double Wall, double Processor, int Points);

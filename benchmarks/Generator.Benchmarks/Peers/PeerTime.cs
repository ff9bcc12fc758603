using Generator.Benchmarks.Measuring;

namespace Generator.Benchmarks.Peers;

/// <summary>Milliseconds of theirs and of ours, by the clock or of the processor.</summary>
/// <param name="ByProcessor">Of the processor, for machines on which others work as well.</param>
internal sealed record PeerTime(bool ByProcessor)
{
    /// <summary>A complete search, or zero points, below which there is nothing.</summary>
    public static bool IsProven(PeerAnswer answer) => answer.Status == "Optimal" || (answer.Trace.Count > 0 && answer.Trace[^1].Points == 0);

    public double Build(PeerAnswer answer) => ByProcessor ? answer.BuildProcessor : answer.Build;

    public double Flatten(PeerAnswer answer) => ByProcessor ? answer.FlattenProcessor : answer.Flatten;

    /// <summary>Everything before the solver begins.</summary>
    public double Before(PeerAnswer answer) => Build(answer) + Flatten(answer);

    /// <summary>The solver's time to its first answer, or all that it had.</summary>
    public double First(PeerAnswer answer) => answer.Trace.Count > 0 ? Of(answer.Trace[0]) : All(answer);

    public double? First(Measurement measurement) => measurement.Trace.Count > 0 ? Of(measurement.Trace[0]) : null;

    /// <summary>The solver's time to its proof, or all that it had.</summary>
    public double Proof(PeerAnswer answer) => answer.Trace.Count > 0 && answer.Trace[^1].Points == 0 ? Of(answer.Trace[^1]) : All(answer);

    public double? Proof(Measurement measurement) => measurement.Proven is { } proven ? Of(proven) : null;

    private double All(PeerAnswer answer) => ByProcessor ? answer.Processor : answer.Elapsed;

    private double Of(TracePoint point) => ByProcessor ? point.Processor : point.Wall;
}

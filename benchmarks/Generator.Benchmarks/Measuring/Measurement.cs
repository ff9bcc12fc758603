namespace Generator.Benchmarks.Measuring;

/// <summary>What drafting one stored brief took, in a process of its own. Times in milliseconds.</summary>
internal sealed record Measurement
{
    /// <summary>Name of the brief without ending.</summary>
    public string Brief { get; init; } = string.Empty;

    /// <summary>The code had been run before in the same process, so that it was optimised; else the process had just begun.</summary>
    public bool Warm { get; init; }

    /// <summary>CP-SAT worked alone, without the constructive pass.</summary>
    public bool Alone { get; init; }

    /// <summary>The whole search in a process that had just begun: what most tables are about.</summary>
    [Newtonsoft.Json.JsonIgnore]
    public bool IsFresh => !Warm && !Alone;

    /// <summary>Found, Impossible, OutOfTime, or Failed when the process broke down.</summary>
    public string Status { get; init; } = string.Empty;

    /// <summary>What is known of the points: Perfect, ProvenBest, BestFound; empty without a routine.</summary>
    public string Standing { get; init; } = string.Empty;

    /// <summary>From the start of the process to its first statement.</summary>
    public double Start { get; init; }

    /// <summary>Loading the library.</summary>
    public double Library { get; init; }

    /// <summary>Reading the brief.</summary>
    public double Reading { get; init; }

    /// <summary>Every better routine, the first valid one first.</summary>
    public IReadOnlyList<TracePoint> Trace { get; init; } = [];

    /// <summary>From the brief in hand to the end of the search.</summary>
    public double Elapsed { get; init; }

    /// <summary>The same in processor time.</summary>
    public double Processor { get; init; }

    /// <summary>Greatest resident set of the process, in MiB.</summary>
    public double Peak { get; init; }

    /// <summary>From the brief in hand to the first valid routine; null without one.</summary>
    [Newtonsoft.Json.JsonIgnore]
    public double? First => Trace.Count > 0 ? Trace[0].Wall : null;

    /// <summary>From the start of the process to the first valid routine.</summary>
    [Newtonsoft.Json.JsonIgnore]
    public double? FirstFromStart => Start + Library + Reading + First;

    /// <summary>The time to the best routine, where that was perfect or proven best.</summary>
    [Newtonsoft.Json.JsonIgnore]
    public TracePoint? Proven => Standing is "Perfect" or "ProvenBest" ? Trace[^1] : null;

    /// <summary>Points at a moment; null while there was no routine.</summary>
    /// <param name="seconds">Since the brief was in hand.</param>
    /// <param name="cores">0 for seconds by the clock; else seconds of so many busy cores, by processor time.</param>
    public int? PointsAt(double seconds, int cores = 0) =>
        Trace.LastOrDefault(t => (cores == 0 ? t.Wall : t.Processor / cores) <= seconds * 1000)?.Points;
}

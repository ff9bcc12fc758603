using Generator.Benchmarks.Measuring;

namespace Generator.Benchmarks.Peers;

/// <summary>What another way of solving one stored brief took. Times in milliseconds; processor time is that of the whole way.</summary>
internal sealed record PeerAnswer
{
    /// <summary>Name of the brief without ending.</summary>
    public string Brief { get; init; } = string.Empty;

    /// <summary>Which way.</summary>
    public string Peer { get; init; } = string.Empty;

    /// <summary>Optimal, Feasible, Infeasible, Unknown (out of time), or Failed, with what went wrong.</summary>
    public string Status { get; init; } = string.Empty;

    /// <summary>From the brief in hand to the model in the solver's own language.</summary>
    public double Build { get; init; }

    /// <summary>The same in processor time.</summary>
    public double BuildProcessor { get; init; }

    /// <summary>Flattening, where the solver's language is not the model's; part of no other figure.</summary>
    public double Flatten { get; init; }

    /// <summary>The same in processor time.</summary>
    public double FlattenProcessor { get; init; }

    /// <summary>Every better solution: time since the solver began.</summary>
    public IReadOnlyList<TracePoint> Trace { get; init; } = [];

    /// <summary>Milliseconds that the solver had, at its end.</summary>
    public double Elapsed { get; init; }

    /// <summary>The same in processor time.</summary>
    public double Processor { get; init; }

    /// <summary>Greatest resident set, in MiB.</summary>
    public double Peak { get; init; }

    /// <summary>Answers read back and audited as routines.</summary>
    public int Audited { get; init; }

    /// <summary>How many of them the audit passed at the very points that the solver counted.</summary>
    public int Agreed { get; init; }
}

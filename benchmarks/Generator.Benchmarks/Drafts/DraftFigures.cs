namespace Generator.Benchmarks.Drafts;

/// <summary>What drafting one brief took, in a process of its own.</summary>
internal sealed record DraftFigures
{
    /// <summary>Name of the brief.</summary>
    public string Brief { get; init; } = string.Empty;

    /// <summary>The status in words: Found, Impossible, OutOfTime, or Failed when the process broke down.</summary>
    public string Status { get; init; } = string.Empty;

    /// <summary>Milliseconds from the start of the search to the first valid routine; null without one.</summary>
    public double? First { get; init; }

    /// <summary>Points of the routine; null without one.</summary>
    public int? Points { get; init; }

    public string Standing { get; init; } = string.Empty;

    /// <summary>Milliseconds that the whole search took.</summary>
    public double Elapsed { get; init; }

    /// <summary>Greatest working set of the process, in MiB.</summary>
    public double Memory { get; init; }

    /// <summary>Milliseconds that one audit of 200 moves takes on this machine now: the unit of the ratios.</summary>
    public double Audit { get; init; }

    /// <summary>The time to the first routine in audits of 200 moves, which tells more than seconds on a machine that others use as well.</summary>
    public double? FirstRatio => First / Audit;
}

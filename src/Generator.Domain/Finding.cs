namespace Generator.Domain;

/// <summary>One thing that a rule has to say about a routine. Knows no solver.</summary>
public sealed record Finding
{
    /// <summary>Id of the rule.</summary>
    public required string Rule { get; init; }

    public required Severity Severity { get; init; }

    /// <summary>Number of the move from 1; 0 for the routine as a whole.</summary>
    public int Move { get; init; }

    /// <summary>When.</summary>
    public HalfCounts Count { get; init; }

    /// <summary>Names of those concerned.</summary>
    public string Who { get; init; } = string.Empty;

    public decimal? Measured { get; init; }

    public decimal? Allowed { get; init; }

    /// <summary>Unit of measured and allowed.</summary>
    public string Unit { get; init; } = string.Empty;

    /// <summary>What it costs; 0 for notes and for what must never occur.</summary>
    public int Points { get; init; }

    /// <summary>A sentence in the trade's words.</summary>
    public required string Message { get; init; }

    /// <summary>What to do about it; empty where nothing general can be said.</summary>
    public string Advice { get; init; } = string.Empty;
}

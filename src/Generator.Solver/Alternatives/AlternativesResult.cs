using Generator.Rules;

namespace Generator.Solver.Alternatives;

/// <summary>What came of a search for alternatives.</summary>
public sealed record AlternativesResult
{
    /// <summary>The brief that they answer.</summary>
    public required Scene Scene { get; init; }

    /// <summary>Best first; fewer than wanted when time ran out.</summary>
    public required IReadOnlyList<Alternative> Found { get; init; }

    /// <summary>Statements of the brief that no routine can satisfy together; empty unless that is so.</summary>
    public IReadOnlyList<string> Clash { get; init; } = [];

    /// <summary>Routines that were looked at.</summary>
    public int Seen { get; init; }

    public TimeSpan Elapsed { get; init; }
}

using Generator.Domain;
using Generator.Rules.Judging;

namespace Generator.Solver.Questions;

/// <summary>The outcome of a search.</summary>
public sealed record DraftResult
{
    public required DraftStatus Status { get; init; }

    /// <summary>Audited and clean; null unless <see cref="DraftStatus.Found"/>. Its brief is the brief as drafted, with every default filled in.</summary>
    public Routine? Routine { get; init; }

    public Verdict? Verdict { get; init; }

    public Standing Standing { get; init; }

    /// <summary>No routine can have fewer points.</summary>
    public int Bound { get; init; }

    /// <summary>Search time until the first valid routine.</summary>
    public TimeSpan? FirstAfter { get; init; }

    /// <summary>Whole search time.</summary>
    public TimeSpan Elapsed { get; init; }

    /// <summary>Which part of the engine found the routine.</summary>
    public string Source { get; init; } = string.Empty;

    /// <summary>The same seed and brief give this routine again, because the search ended by itself and not by the clock.</summary>
    public bool Reproducible { get; init; }

    /// <summary>Statements of the brief that cannot hold together, when impossible.</summary>
    public IReadOnlyList<string> Clash { get; init; } = [];

    /// <summary>Why they cannot, in words.</summary>
    public IReadOnlyList<string> Reasons { get; init; } = [];
}

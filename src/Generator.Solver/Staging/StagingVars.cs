using Google.OrTools.Sat;

namespace Generator.Solver.Staging;

/// <summary>One exchange of a plan: who comes, when, for how long, and what it leaves behind.</summary>
public sealed class StagingVars
{
    public required int Index { get; init; }

    /// <summary>Takes place; only the last exchanges of a plan may not.</summary>
    public required BoolVar Used { get; init; }

    /// <summary>One for each attacker.</summary>
    public required BoolVar[] By { get; init; }

    public required IntVar Start { get; init; }

    /// <summary>Number of moves, 0 when unused.</summary>
    public required IntVar Moves { get; init; }

    public required IntVar End { get; init; }

    /// <summary>Ends with the attacker out.</summary>
    public required BoolVar PutsOut { get; init; }

    /// <summary>Threat time of every attacker before the exchange, as it would be when active.</summary>
    public required IReadOnlyList<IntVar> Threats { get; init; }

    /// <summary>Out before the exchange.</summary>
    public required IReadOnlyList<BoolVar> Out { get; init; }
}

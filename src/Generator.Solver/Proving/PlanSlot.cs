using Google.OrTools.Sat;

namespace Generator.Solver.Proving;

/// <summary>One move of the plan, or nothing behind the last one.</summary>
internal sealed class PlanSlot
{
    public required int Index { get; init; }

    /// <summary>One for each class of moves, at most one of them true.</summary>
    public required BoolVar[] Is { get; init; }

    /// <summary>There is a move.</summary>
    public required BoolVar Used { get; init; }

    public required IntVar Start { get; init; }

    public required IntVar End { get; init; }

    /// <summary>The move concerns this attacker, as target or as second.</summary>
    public required BoolVar[] Touches { get; init; }

    /// <summary>This attacker is the second one; null where nobody can be.</summary>
    public required BoolVar?[] Second { get; init; }

    /// <summary>Before the move: the posture in which the last reaction left each attacker, one literal for each.</summary>
    public required BoolVar[][] Posture { get; init; }

    /// <summary>Before the move: at best, when each attacker can land an attack.</summary>
    public required IntVar[] Threat { get; init; }

    /// <summary>Before the move: at best, until when each attacker stays open.</summary>
    public required IntVar[] Open { get; init; }
}

using Google.OrTools.Sat;

namespace Generator.Solver.Proving;

/// <summary>One move of the plan, or nothing behind the last one.</summary>
internal sealed class PlanSlot
{
    public required int Index { get; init; }

    /// <summary>Moves that are not looked at one by one stand here instead of a move.</summary>
    public bool IsStretch { get; init; }

    /// <summary>
    /// Moves that are only counted: those of the stretch, or those just before this move, which concern nobody who is followed. Null where there can be none.
    /// </summary>
    public IntVar? Others { get; init; }

    /// <summary>In the stretch: whether moves on each attacker followed change anything for them; null otherwise.</summary>
    public BoolVar?[] Changed { get; init; } = [];

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

    /// <summary>Before the move: the posture in which the last reaction left each attacker, one literal for each; none for those who are not followed.</summary>
    public required BoolVar[][] Posture { get; init; }

    /// <summary>Before the move: at best, when each attacker can land an attack.</summary>
    public required IntVar[] Threat { get; init; }

    /// <summary>Before the move: at best, when each attacker is ready where they are.</summary>
    public required IntVar[] Ready { get; init; }

    /// <summary>Before the move: at best, until when each attacker stays open.</summary>
    public required IntVar[] Open { get; init; }
}

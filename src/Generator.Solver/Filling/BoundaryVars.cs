using Google.OrTools.Sat;

namespace Generator.Solver.Filling;

/// <summary>
/// The solver's counterpart of the fight's state between two moves. Hands: 0 guard, 1 out, 2 + a holding attacker a, 2 + cast + a held by a.
/// Bound: 0 free, 1 + a in front by a, 1 + cast + a from the rear by a. LastTarget: an attacker, or cast for none.
/// </summary>
public sealed class BoundaryVars
{
    public required IntVar Time { get; init; }

    public required IntVar Stance { get; init; }

    public required IntVar Facing { get; init; }

    public required IntVar Left { get; init; }

    public required IntVar Right { get; init; }

    public required IntVar Bound { get; init; }

    public required IntVar LastTarget { get; init; }

    /// <summary>How far the hero may have followed the last target off the mark, in centimetres.</summary>
    public required IntVar Followed { get; init; }

    public required IReadOnlyList<AttackerVars> Attackers { get; init; }
}

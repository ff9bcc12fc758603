using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Rules.Replaying;

namespace Generator.Solver.Completing;

/// <summary>The side that "lead", "rear", "near" and "far" mean at one moment.</summary>
internal static class ActingSide
{
    /// <summary>Whether a technique of this side is done with the limb that was said; a square stance has neither lead nor rear, and suits both.</summary>
    /// <param name="foot">What was said.</param>
    /// <param name="side">Side of the technique.</param>
    /// <param name="step">The move as it is replayed.</param>
    public static bool Suits(SketchFoot foot, Side side, Step step)
    {
        Side? lead = step.StanceStart == Stance.LeftLead ? Side.Left : step.StanceStart == Stance.RightLead ? Side.Right : null;
        var near = foot is SketchFoot.Near or SketchFoot.Far ? Near(step) ?? lead : lead;
        return near is null || (foot is SketchFoot.Lead or SketchFoot.Near) == (near == side);
    }

    /// <summary>The same of "same" and "other": what has no side, and what comes first, leaves both open.</summary>
    /// <param name="foot">What was said.</param>
    /// <param name="side">Side of the technique.</param>
    /// <param name="last">Side of what the hero did last; null for none.</param>
    public static bool Suits(SketchFoot foot, Side side, Side? last) => last is null || (foot == SketchFoot.Same) == (last == side);

    /// <summary>The side of the hero on which the attacker is; null straight ahead or behind.</summary>
    private static Side? Near(Step step)
    {
        if (step.Row.Attacker < 0)
        {
            return null;
        }

        var turn = new Bearing(step.Before.Facing).To(new Bearing(step.TargetBearing)).HalfHours;
        return turn is 0 or Bearing.Circle / 2 ? null : turn > 0 ? Side.Right : Side.Left;
    }
}

using Generator.Rules.Bodies;
using Generator.Solver.Filling;

namespace Generator.Solver.Rules;

/// <summary>What one row of an answer does with somebody's place.</summary>
/// <param name="Slot">The row.</param>
/// <param name="Attacker">Who.</param>
/// <param name="Motion">Their ways.</param>
/// <param name="Treatment">What the row is to them; null for somebody who is led.</param>
/// <param name="After">Their last leg after the row.</param>
internal sealed record FloorDeed(SlotVars Slot, int Attacker, Motion Motion, Treatment? Treatment, Leg After)
{
    /// <summary>What the row adds to their way, the last first.</summary>
    public IEnumerable<Leg> Legs() => After.Chain().Where(l => l.Move == Motion.Move);

    /// <summary>They are the target, rather than led or the second one.</summary>
    public bool IsTarget => Treatment is { IsTarget: true };
}

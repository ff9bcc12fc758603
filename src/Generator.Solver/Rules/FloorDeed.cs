using Generator.Rules.Bodies;
using Generator.Solver.Filling;

namespace Generator.Solver.Rules;

/// <summary>What one row of an answer does with somebody's place.</summary>
/// <param name="Slot">The row.</param>
/// <param name="Attacker">Who.</param>
/// <param name="Motion">Their ways.</param>
/// <param name="Treatment">What the row is to them; null for somebody who is led.</param>
/// <param name="Before">Their last leg before the row.</param>
/// <param name="After">Their last leg after the row.</param>
internal sealed record FloorDeed(SlotVars Slot, int Attacker, Motion Motion, Treatment? Treatment, Leg Before, Leg After)
{
    /// <summary>They are still under way when it begins to act on them, so that when it sends them on hangs on what was done before.</summary>
    public bool IsLate => Motion.Reacts && Before.Arrives > Motion.Taken;

    /// <summary>What the row adds to their way, the last first.</summary>
    public IEnumerable<Leg> Legs() => After.Chain().Where(l => l.Move == Motion.Move);

    /// <summary>They are the target, rather than led or the second one.</summary>
    public bool IsTarget => Treatment is { IsTarget: true };
}

using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Solver.Filling;

/// <summary>
/// Lingers and entrances may be decided late: to let an attacker stay down longer, or come in later, breaks no earlier move, since earlier
/// ones only asked that nobody else could have come sooner.
/// </summary>
public static class Delayed
{
    /// <summary>A delay of this attacker is a later entrance, not a longer linger: they have not been in the fight yet.</summary>
    public static bool IsEntrance(AttackerState state) => state.OpenUntil == int.MinValue && state.Posture is Posture.Ready or Posture.Knelt;
}

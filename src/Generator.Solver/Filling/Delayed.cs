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
    public static bool IsEntrance(AttackerState state) => state.OpenUntil == int.MinValue && state.Posture == Posture.Ready;

    /// <summary>The state once an attacker's return or entrance is delayed.</summary>
    public static FightState By(FightState state, int attacker, int halfCounts)
    {
        if (halfCounts == 0)
        {
            return state;
        }

        var attackers = state.Attackers.ToArray();
        var was = attackers[attacker];
        attackers[attacker] = IsEntrance(was)
            ? was with { Entrance = was.Entrance + halfCounts, ReadyAt = Math.Max(was.ReadyAt, was.Entrance) + halfCounts }
            : was with { ReadyAt = was.ReadyAt + halfCounts };
        return state with { Attackers = attackers };
    }
}

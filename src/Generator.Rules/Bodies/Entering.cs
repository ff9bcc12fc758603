using Generator.Rules.Replaying;

namespace Generator.Rules.Bodies;

/// <summary>
/// Who comes too near to whom on the way onto the floor. That way is known from the start, where everybody else will be is not: with every move it is looked at until the move ends, from the end of
/// the move before on, and against what the move brings about from the very beginning.
/// </summary>
public static class Entering
{
    /// <summary>Those of a step.</summary>
    internal static void Meetings(Scene scene, Step step, ref List<Meeting>? found)
    {
        var since = Since(step.Before);
        double? stirs = null;
        for (var a = 0; a < scene.Cast; a++)
        {
            var one = step.After.Attackers[a];
            if (one.Entrance <= 0 || (one.Entrance <= since && one.Entrance <= (stirs ??= FirstStir(step))))
            {
                continue;
            }

            for (var b = 0; b < scene.Cast; b++)
            {
                Meeting.Entering(scene.Settle, (a, b), one.Way, step.After.Attackers[b].Way, step.Index, (since, step.After.Time), ref found);
            }
        }
    }

    /// <summary>
    /// What nobody would see who comes onto the floor at another moment than was known while the moves so far were worked out: whether they meet somebody.
    /// </summary>
    /// <param name="scene">The floor.</param>
    /// <param name="attacker">Who; has not acted.</param>
    /// <param name="now">What is known of everybody now.</param>
    /// <param name="states">What was known after each move, the last first, and before the first.</param>
    public static bool Meets(Scene scene, int attacker, IReadOnlyList<AttackerState> now, IEnumerable<FightState> states)
    {
        List<Meeting>? found = null;
        var mine = now[attacker].Way;
        FightState? after = null;
        foreach (var before in states)
        {
            if (after is not null)
            {
                var window = (Since(before), (double)after.Time);
                for (var b = 0; b < scene.Cast; b++)
                {
                    var theirs = after.Attackers[b].HasNotActed ? now[b].Way : after.Attackers[b].Way;
                    Meeting.Entering(scene.Settle, (attacker, b), mine, theirs, before.Moves, window, ref found);
                    Meeting.Entering(scene.Settle, (b, attacker), theirs, mine, before.Moves, window, ref found);
                }

                if (found is not null)
                {
                    return true;
                }
            }

            if (before.Time <= First(mine).From)
            {
                return false;
            }

            after = before;
        }

        return false;
    }

    /// <summary>Moment up to which a state's past has been looked at.</summary>
    private static double Since(FightState before) => before.Moves == 0 ? double.NegativeInfinity : before.Time;

    /// <summary>The first moment at which anybody does what a step brings about.</summary>
    private static double FirstStir(Step step)
    {
        var first = double.PositiveInfinity;
        foreach (var attacker in step.After.Attackers)
        {
            for (var leg = attacker.Leg; leg is not null && leg.Move == step.Index; leg = leg.Before)
            {
                first = Math.Min(first, leg.From);
            }
        }

        return first;
    }

    private static Leg First(Leg way) => way.Before is { } before ? First(before) : way;
}

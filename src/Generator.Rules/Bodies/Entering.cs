using Generator.Rules.Replaying;

namespace Generator.Rules.Bodies;

/// <summary>
/// Who comes too near to whom on the way onto the floor. That way is known from the start, where everybody else will be is not: with every move it is looked at until the move ends, from the end of
/// the move before on, and against what the move brings about from the very beginning.
/// </summary>
public static class Entering
{
    /// <summary>Adds those of a step to a list; true where there is no list and there are some.</summary>
    internal static bool Meetings(Scene scene, Step step, List<Meeting>? found)
    {
        var since = Since(step.Before);
        double? stirs = null;
        for (var a = 0; a < scene.Cast; a++)
        {
            var one = step.After.Attackers[a];
            if (one.Entrance <= 0 || (one.Entrance <= since && one.Entrance <= (stirs ??= FirstStir(step))) || SetsOff(one.Way) >= step.After.Time)
            {
                continue;
            }

            for (var b = 0; b < scene.Cast; b++)
            {
                if (Meeting.Entering(scene.Settle, (a, b), one.Way, step.After.Attackers[b].Way, step.Index, (since, step.After.Time), found))
                {
                    return true;
                }
            }
        }

        return false;
    }

    /// <summary>
    /// What nobody would see who comes onto the floor at another moment than was known while the moves so far were worked out: whether they meet somebody who has acted.
    /// </summary>
    /// <param name="scene">The floor.</param>
    /// <param name="attacker">Who; has not acted.</param>
    /// <param name="way">Their last leg now.</param>
    /// <param name="states">What was known after each move, the last first, and before the first.</param>
    public static bool MeetsOnTheFloor(Scene scene, int attacker, Leg way, IEnumerable<FightState> states)
    {
        var setsOff = SetsOff(way);
        FightState? now = null;
        FightState? after = null;
        foreach (var before in states)
        {
            if (after is not null)
            {
                for (var b = 0; b < scene.Cast; b++)
                {
                    var other = after.Attackers[b];
                    if (now!.Attackers[b] is var last && !last.HasNotActed && Meets(scene, (attacker, b), way, other.HasNotActed ? StandsBy(scene, b, other, last.Entrance) : other, before.Moves, (Since(before), after.Time)))
                    {
                        return true;
                    }
                }
            }

            if (before.Time <= setsOff)
            {
                return false;
            }

            now ??= before;
            after = before;
        }

        return false;
    }

    /// <summary>The same of somebody else who has not acted, either.</summary>
    /// <param name="scene">The floor.</param>
    /// <param name="who">The two.</param>
    /// <param name="way">Last leg of the first.</param>
    /// <param name="other">The second.</param>
    /// <param name="until">End of the last move so far, in half counts.</param>
    public static bool MeetsAtTheEdge(Scene scene, (int One, int Other) who, Leg way, AttackerState other, int until) =>
        SetsOff(way) < until && Meets(scene, who, way, other, int.MinValue, (double.NegativeInfinity, until));

    /// <summary>The moment at which somebody's first leg begins.</summary>
    private static double SetsOff(Leg way) => way.Before is { } before ? SetsOff(before) : way.From;

    private static bool Meets(Scene scene, (int One, int Other) who, Leg way, AttackerState other, int move, (double Since, double Until) span) =>
        Meeting.Entering(scene.Settle, who, way, other.Way, move, span, null)
        || (other.Entrance > 0 && Meeting.Entering(scene.Settle, (who.Other, who.One), other.Way, way, move, span, null));

    /// <summary>Somebody who has not acted yet, with the entrance that was found for them since.</summary>
    private static AttackerState StandsBy(Scene scene, int attacker, AttackerState stands, int entrance) => stands.Entrance == entrance ? stands : stands.Entering(scene, attacker, entrance);

    /// <summary>Moment up to which a state's past has been looked at.</summary>
    private static double Since(FightState before) => before.Moves == 0 ? double.NegativeInfinity : before.Latest;

    /// <summary>The first moment at which anybody does what a step brings about.</summary>
    private static double FirstStir(Step step)
    {
        var first = double.PositiveInfinity;
        foreach (var attacker in step.After.Attackers)
        {
            first = Math.Min(first, attacker.Leg?.Begins(step.Index) ?? double.PositiveInfinity);
        }

        return first;
    }
}

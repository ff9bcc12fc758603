using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Solver.Constructing;

/// <summary>How far one situation is from another into which it is to lead back.</summary>
internal static class Nearness
{
    private const double HandApart = 0.7;

    private const double Trifle = 0.1;

    /// <summary>Half counts beyond which later is no worse.</summary>
    private const int MostLate = 20;

    /// <summary>In points: the nearer in time, the more it counts.</summary>
    /// <param name="now">The situation.</param>
    /// <param name="threats">Its threat times.</param>
    /// <param name="then">The one into which it is to lead.</param>
    /// <param name="thenThreats">The threat times of that.</param>
    public static double Apart(FightState now, IReadOnlyList<int> threats, FightState then, IReadOnlyList<int> thenThreats)
    {
        var apart = (now.Stance == then.Stance ? 0 : 1) + (now.Left == then.Left ? 0 : HandApart) + (now.Right == then.Right ? 0 : HandApart)
            + (now.Bound == then.Bound ? 0 : 2) + (Trifle * new Bearing(now.Facing).Apart(new Bearing(then.Facing)));
        for (var a = 0; a < now.Attackers.Count; a++)
        {
            apart += Apart(now.Attackers[a], then.Attackers[a]);
            if (threats[a] != int.MaxValue && thenThreats[a] != int.MaxValue)
            {
                apart += Trifle * Math.Min(MostLate, Math.Abs(threats[a] - thenThreats[a]));
            }
        }

        return 0.5 * apart / (1 + (Trifle * Math.Max(0, then.Time - now.Time)));
    }

    private static double Apart(AttackerState now, AttackerState then) =>
        now.Posture == Posture.Out != (then.Posture == Posture.Out) ? 3
        : now.IsActive != then.IsActive ? 2
        : then.Posture == Posture.Out ? 0 : Trifle * new Bearing(now.Bearing).Apart(new Bearing(then.Bearing));
}

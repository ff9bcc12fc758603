using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Replaying;

namespace Generator.Solver.Constructing;

/// <summary>
/// How far attackers are from where a thing serves a hero moment: before a wall, a rail, a bed. Nobody comes there by themselves when the hero has just come to its mark, and a moment that waits for luck
/// is mostly missed. Over one mark luck has the whole fight, and nothing is led up to.
/// </summary>
internal sealed class AtThing
{
    /// <summary>Half counts before the moment is due at which the search begins to look for its attacker to be there.</summary>
    private const double Foresight = 40;

    /// <summary>What a half hour away from there costs in points, and the most that a place costs.</summary>
    private const double HalfHour = 0.3, Misplaced = 2.5;

    /// <summary>Of the attacks of somebody who is not there those, in percent, for which they walk round.</summary>
    public const int WalksPercent = 50;

    private readonly int[]?[] away;
    private readonly int attacker;

    private AtThing(int[]?[] away, int attacker) => (this.away, this.attacker) = (away, attacker);

    /// <summary>Null where the moment does not begin at a thing on which the bearing of its target tells, or where all bearings serve.</summary>
    /// <param name="scene">The brief.</param>
    /// <param name="step">The first move of the moment.</param>
    public static AtThing? For(Scene scene, MomentStep step)
    {
        if (scene.Marks.Count == 1)
        {
            return null;
        }

        var byMark = Enumerable.Range(0, scene.Marks.Count).Select(mark => step.BearingsAt(scene, mark) is { } serving ? MomentReading.Away(serving) : null).ToArray();
        return Array.TrueForAll(byMark, a => a is null) ? null : new AtThing(byMark, step.Attacker);
    }

    /// <summary>For each bearing how many half hours it is from one at which this attacker should be for its sake; null while that does not matter.</summary>
    public int[]? HalfHoursOff(FightState state, int who, double due) =>
        (attacker < 0 || attacker == who) && state.Time + Foresight >= due ? away[state.Mark] : null;

    /// <summary>In points; 0 where somebody is there, or where nobody can be from the mark in hand.</summary>
    public double Owed(FightState state, double due)
    {
        if (away[state.Mark] is not { } from || state.Time + Foresight < due)
        {
            return 0;
        }

        var least = int.MaxValue;
        for (var a = 0; a < state.Attackers.Count; a++)
        {
            least = (attacker < 0 || attacker == a) && state.Attackers[a].Posture != Posture.Out ? Math.Min(least, from[state.Attackers[a].Bearing]) : least;
        }

        return Math.Min(Misplaced, HalfHour * least);
    }
}

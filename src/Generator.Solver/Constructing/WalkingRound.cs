using Generator.Domain;
using Generator.Rules;

namespace Generator.Solver.Constructing;

/// <summary>Whether and to which bearing an attacker first walks round before attacking: now and then for a change, more often to be in sight for a hero moment that is coming.</summary>
internal sealed class WalkingRound(Scene scene, Bystanders bystanders, Dice dice)
{
    /// <summary>Attacks in a hundred for which the attacker walks round although they need not.</summary>
    private const int Roaming = 10;

    /// <summary>Half hours to walk at most for a change, and to be in sight.</summary>
    private const int Most = 4;

    private const int MostIntoSight = 6;

    /// <summary>Half hours for which the brief's patience lasts: who walks farther is waited for, and that costs points.</summary>
    private readonly int free = Math.Clamp(scene.Brief.Pace.Patience.Value / Math.Max(1, scene.Settle.WalkRoundPerHalfHour.Value), 1, MostIntoSight);

    /// <summary>The attacker should, although nothing makes them.</summary>
    /// <param name="away">How far each bearing is from one that is right, in half hours; null where any is.</param>
    /// <param name="bearing">Where they are.</param>
    /// <param name="percent">Where that one is not right, in how many of a hundred attacks.</param>
    public bool Wanted(int[]? away, int bearing, int percent) => dice.Percent(away?[bearing] > 0 ? percent : Roaming);

    /// <summary>Another bearing from which there is time to come, and the gap that it takes; null when there is none.</summary>
    public int? To(Node node, int attacker, int attack, int[]? away, ref int least)
    {
        if (node.IsOpening)
        {
            return null;
        }

        return away?[node.State.Attackers[attacker].Bearing] > 0
            ? IntoSight(node, attacker, attack, away, ref least)
            : At(node, attacker, attack, (1 + dice.Next(Most)) * (dice.Percent(50) ? 1 : -1), int.MaxValue, ref least);
    }

    /// <summary>The bearing so many half hours on, if there is time to come from there, and the gap that it takes.</summary>
    public int? By(Node node, int attacker, int attack, int round, ref int least) => At(node, attacker, attack, round, int.MaxValue, ref least);

    /// <summary>A bearing in sight or, where that is too far for once, on the way there.</summary>
    private int? IntoSight(Node node, int attacker, int attack, int[] away, ref int least)
    {
        var bearing = node.State.Attackers[attacker].Bearing;
        var wanted = away[bearing] <= free ? 0 : away[bearing] - 1;
        var first = dice.Next(2 * free);
        for (var i = 0; i < 2 * free; i++)
        {
            var way = ((first + i) % (2 * free)) - free;
            var by = way < 0 ? way : way + 1;
            if (away[new Bearing(bearing + by).HalfHours] <= wanted && At(node, attacker, attack, by, scene.Brief.Pace.LongestPause.Value, ref least) is { } found)
            {
                return found;
            }
        }

        return null;
    }

    private int? At(Node node, int attacker, int attack, int by, int most, ref int least)
    {
        var stands = node.State.Attackers[attacker];
        var bearing = new Bearing(stands.Bearing + by).HalfHours;
        var walk = Math.Abs(by) * scene.Settle.WalkRoundPerHalfHour.Value;
        var gap = Math.Max(least, node.Threats[attacker] + walk - scene.Settle.ContactAfter.Value - node.State.Time);
        if (stands.Distance > scene.Marks.FloorOf(node.State.Mark)[bearing] || gap > Math.Max(least, most) || bystanders.At(node, attacker, attack, bearing, node.State.Time + gap) is null)
        {
            return null;
        }

        least = gap;
        return bearing;
    }
}

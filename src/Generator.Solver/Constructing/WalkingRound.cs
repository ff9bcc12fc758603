using Generator.Domain;
using Generator.Rules;

namespace Generator.Solver.Constructing;

/// <summary>Whether and to which bearing an attacker first walks round before attacking: now and then for a change, more often to be in sight for a hero moment that is coming.</summary>
internal sealed class WalkingRound(Scene scene, Dice dice)
{
    /// <summary>Attacks in a hundred for which the attacker walks round although they need not.</summary>
    private const int Roaming = 10;

    /// <summary>The same where the moment would not read to a camera from where they are.</summary>
    private const int Fetched = 50;

    /// <summary>Half hours to walk at most, and to be in sight.</summary>
    private const int Most = 4;

    private const int MostToBeSeen = 6;

    /// <summary>The attacker should, although nothing makes them.</summary>
    /// <param name="inSight">Bearings that are right, one flag each; null for any.</param>
    /// <param name="bearing">Where they are.</param>
    public bool Wanted(bool[]? inSight, int bearing) => dice.Percent(inSight?[bearing] == false ? Fetched : Roaming);

    /// <summary>Another bearing from which there is time to come, and the gap that it takes; null when there is none.</summary>
    public int? To(Node node, int attacker, bool[]? inSight, ref int least)
    {
        var stands = node.State.Attackers[attacker];
        var by = By(Most);
        for (var tries = 0; inSight?[new Bearing(stands.Bearing + by).HalfHours] == false && tries < Most; tries++)
        {
            by = By(MostToBeSeen);
        }

        var bearing = new Bearing(stands.Bearing + by).HalfHours;
        if (node.IsOpening || stands.Distance > scene.Floor[bearing])
        {
            return null;
        }

        var walk = Math.Abs(by) * scene.Settle.WalkRoundPerHalfHour.Value;
        least = Math.Max(least, node.Threats[attacker] + walk - scene.Settle.ContactAfter.Value - node.State.Time);
        return bearing;
    }

    private int By(int most) => (1 + dice.Next(most)) * (dice.Percent(50) ? 1 : -1);
}

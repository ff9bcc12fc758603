using Generator.Rules.Replaying;
using Generator.Solver.Reworking;

namespace Generator.Solver.Revising;

/// <summary>What the search pays for changes, by who has to learn them.</summary>
internal sealed class TeachingCosts(TeachingWeights weights) : IChangeCosts
{
    /// <summary>So that a technique that changes for both partners costs about as much as one move in a repair.</summary>
    private const int Scale = 12;

    public int Point => 2;

    public double Pull => 8;

    public bool KeepsGaps => true;

    public int Swap(OldMove old, in Row now, int gap)
    {
        if (old.IsSame(now))
        {
            return gap == old.Gap ? 0 : Scale * weights.Count;
        }

        if (old.Row.Attacker != now.Attacker)
        {
            return Scale * (weights.Order + (2 * weights.Technique));
        }

        var hero = old.Row.Technique == now.Technique && old.Row.To == now.To ? 0 : weights.Technique;
        var attacker = old.Row.Attack == now.Attack && old.Row.Reaction == now.Reaction ? 0 : weights.Technique;
        return Scale * (hero + attacker);
    }

    public int Add(in Row now) => Scale * (weights.Order + weights.Technique);

    public int Drop(OldMove old) => Scale * weights.Order;
}

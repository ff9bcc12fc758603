using Generator.Solver.Completing;

namespace Generator.Solver.Revising;

/// <summary>What a revision pays for what it changes: what the hero and the attackers of the move then have to learn anew, as <see cref="Reteaching"/> counts it.</summary>
internal sealed class TeachingPrices(TeachingWeights weights) : IPrices
{
    /// <summary>Fewer than so many changes of place, which nobody has to learn, come to less than one count.</summary>
    private const int Scale = 64;

    /// <inheritdoc/>
    public long Of(int parts)
    {
        var cost = Giving.Has(parts, SketchPart.Count) ? 2 * weights.Count : 0;
        cost += Giving.Has(parts, SketchPart.Added) ? 2 * weights.Order : 0;
        if ((parts & Giving.LeftOut) != 0)
        {
            cost += 2 * (weights.Order / 2);
        }
        else if (Giving.Has(parts, SketchPart.Attacker))
        {
            cost += (2 * weights.Order) + (weights.Order / 2);
        }
        else
        {
            cost += Giving.Has(parts, SketchPart.Technique) || Giving.Has(parts, SketchPart.Side) ? weights.Technique : 0;
            cost += Giving.Has(parts, SketchPart.Attack) || Giving.Has(parts, SketchPart.Reaction) ? weights.Technique : 0;
        }

        return ((long)Scale * cost) + (Giving.Has(parts, SketchPart.Place) ? 1 : 0);
    }
}

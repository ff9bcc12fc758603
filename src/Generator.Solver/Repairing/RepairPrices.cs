using Generator.Solver.Completing;

namespace Generator.Solver.Repairing;

/// <summary>What a repair pays for what it changes, in the order of <see cref="Mildness"/>: moves first, then techniques, attacks, sides; counts and places come to a trifle beside them.</summary>
internal sealed class RepairPrices : IPrices
{
    /// <summary>One side; one count or place is a trifle beside it.</summary>
    public const long Side = 1L << 12;

    /// <summary>One move more, whatever of it.</summary>
    public const long Move = Technique << Bits;

    /// <summary>Of each kind so many are told apart that 127 still come to less than one of the next.</summary>
    private const int Bits = 7;

    private const long Attack = Side << Bits, Technique = Attack << Bits;

    /// <inheritdoc/>
    public long Of(int parts)
    {
        var price = (Giving.Has(parts, SketchPart.Count) ? 1L : 0) + (Giving.Has(parts, SketchPart.Place) ? 1 : 0);
        if ((parts >> (int)SketchPart.Added) == 0)
        {
            return price;
        }

        var milder = Giving.Has(parts, SketchPart.Technique) || (parts & Giving.LeftOut) != 0 ? Technique
            : Giving.Has(parts, SketchPart.Attacker) || Giving.Has(parts, SketchPart.Attack) ? Attack : 0;
        return price + Move + milder + (Giving.Has(parts, SketchPart.Side) ? Side : 0);
    }
}

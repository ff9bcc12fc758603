using System.Numerics;

namespace Generator.Solver.Completing;

/// <summary>The prices of a sketch: fewer of a dearer kind always come before fewer of a cheaper one.</summary>
internal sealed class SketchPrices : IPrices
{
    /// <summary>Bits for each kind: fewer than 64 things of one kind never cost as much as one of the next.</summary>
    private const int Step = 6;

    /// <inheritdoc/>
    public long Of(int parts)
    {
        var price = 0L;
        for (var left = parts & ~Giving.LeftOut; left != 0; left &= left - 1)
        {
            price += Of((SketchPart)BitOperations.TrailingZeroCount(left));
        }

        return price;
    }

    /// <summary>The price of one thing.</summary>
    public static long Of(SketchPart part) => 1L << (Step * (int)part);
}

using Generator.Domain.Sketches;

namespace Generator.Solver.Completing;

/// <summary>What it costs that something gives.</summary>
public static class SketchPrices
{
    /// <summary>Bits for each kind: fewer than 64 things of one kind never cost as much as one of the next.</summary>
    private const int Step = 6;

    /// <summary>The sum of prices orders routines by how much gave, dearest kind first.</summary>
    public static long Price(this SketchPart part) => 1L << (Step * (int)part);

    /// <summary>What a cell of a kind counts as when it gives; null where it must not.</summary>
    public static SketchPart? Kind(SketchCell? cell, SketchPart part) => cell?.Firmness switch
    {
        Firmness.Fixed => null,
        Firmness.Wish => SketchPart.Wish,
        _ => part,
    };

    /// <summary>How many things give at a price.</summary>
    public static int Things(long price)
    {
        var things = 0;
        for (var left = price; left > 0; left >>= Step)
        {
            things += (int)(left & ((1 << Step) - 1));
        }

        return things;
    }
}

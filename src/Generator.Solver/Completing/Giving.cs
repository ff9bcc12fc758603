namespace Generator.Solver.Completing;

/// <summary>The parts of one move that may give, one bit each.</summary>
internal static class Giving
{
    public const int Nothing = 0;

    /// <summary>The whole move may be left out.</summary>
    public const int LeftOut = 1 << ((int)SketchPart.Technique + 1);

    public const int Everything = (2 * LeftOut) - 1;

    /// <summary>What costs less than doing something else: counts, places, moves put in, reactions, sides.</summary>
    public const int Little = (1 << (int)SketchPart.Attacker) - 1;

    public static int Only(SketchPart part) => 1 << (int)part;

    /// <summary>A part or two: so little that all there is can be tried.</summary>
    public static bool IsNarrow(int giving) => giving != Nothing && System.Numerics.BitOperations.PopCount((uint)giving) <= 2;

    public static bool Has(int giving, SketchPart part) => (giving & (1 << (int)part)) != 0;
}

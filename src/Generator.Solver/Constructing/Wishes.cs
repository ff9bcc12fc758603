using Generator.Solver.Repertoires;
using System.Numerics;

namespace Generator.Solver.Constructing;

/// <summary>
/// What one run of the search would like to show once, drawn by its dice: some techniques, and a setback or two. Others wish for others, so that not
/// every draft shows the handful of moves that is easiest to go on from. Wishes are worth less than a point.
/// </summary>
internal sealed class Wishes
{
    /// <summary>Techniques wished for, and what one of them is worth.</summary>
    private const int Most = 40;

    private const double Worth = 0.3;

    /// <summary>Setbacks wished for, where the brief asks for any: the brief counts them, so that one has to make do for many.</summary>
    private const int MostSetbacks = 3;

    private const double SetbackWorth = 0.9;

    private static readonly ulong SetbackBits = (1UL << MostSetbacks) - 1;

    private readonly ulong[] bits;

    private Wishes(ulong[] bits) => this.bits = bits;

    /// <summary>Draws the wishes of a run.</summary>
    /// <param name="repertoire">What can be done.</param>
    /// <param name="dice">The run's own chance.</param>
    public static Wishes Drawn(Repertoire repertoire, Dice dice)
    {
        var drawn = new ulong[repertoire.Possible.Length];
        Draw(repertoire.SetbackKinds, 0, MostSetbacks, drawn, dice);
        Draw(repertoire.OtherKinds, MostSetbacks, Most, drawn, dice);
        return new Wishes(drawn);
    }

    /// <summary>Wishes fulfilled once a technique has been done.</summary>
    public ulong After(ulong fulfilled, int technique) => fulfilled | bits[technique];

    /// <summary>What they are worth, in points.</summary>
    public static double Value(ulong fulfilled) =>
        (SetbackWorth * BitOperations.PopCount(fulfilled & SetbackBits)) + (Worth * BitOperations.PopCount(fulfilled & ~SetbackBits));

    private static void Draw(int[][] kinds, int first, int count, ulong[] into, Dice dice)
    {
        var order = Enumerable.Range(0, kinds.Length).ToArray();
        dice.Shuffle(order);
        for (var w = 0; w < count && w < order.Length; w++)
        {
            foreach (var technique in kinds[order[w]])
            {
                into[technique] = 1UL << (first + w);
            }
        }
    }
}

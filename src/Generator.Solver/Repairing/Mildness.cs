using Generator.Domain;
using Generator.Library;
using Generator.Solver.Reworking;

namespace Generator.Solver.Repairing;

/// <summary>
/// How much of a routine a repair gives up, its counts apart: the number of moves first; of as many, rather a reaction than a side, rather that than who attacks
/// and with what, and a technique last of all.
/// </summary>
public static class Mildness
{
    /// <summary>What one move more counts for.</summary>
    public const long OneMove = RepairPrices.Move / RepairPrices.Side;

    private static readonly RepairPrices Prices = new();

    /// <summary>The less the milder.</summary>
    public static long Of(Book book, Routine before, Routine after, RoutineChange changes) => changes.Moves.Where(m => m.Kind >= ChangeKind.Changed)
        .Sum(m => Prices.Of(ChangedParts.Of(book, m.Old < 0 ? null : before.Moves[m.Old], m.Now < 0 ? null : after.Moves[m.Now])) / RepairPrices.Side);

    public static long Of(Reworked reworked) => Of(reworked.Scene.Book, reworked.Old, reworked.Routine, reworked.Change);
}

using Generator.Domain;

namespace Generator.Solver.Reworking;

/// <summary>Lays two runs of moves side by side so that the fewest are changed, added or dropped, and among those that stay the shift is least.</summary>
internal static class Alignment
{
    private const long OneMove = 1_000_000;

    /// <summary>In order; every move of both runs once.</summary>
    /// <param name="old">One run.</param>
    /// <param name="now">The other.</param>
    /// <param name="shiftOf">By how much a move that stays shifts; far less than a change weighs.</param>
    public static IReadOnlyList<MoveChange> Of(IReadOnlyList<Move> old, IReadOnlyList<Move> now, Func<Move, Move, int> shiftOf)
    {
        long Pair(Move was, Move move) => RoutineChange.IsSame(was, move) ? shiftOf(was, move) : OneMove;
        var cost = new long[old.Count + 1, now.Count + 1];
        for (var i = old.Count; i >= 0; i--)
        {
            for (var j = now.Count; j >= 0; j--)
            {
                cost[i, j] = (i < old.Count, j < now.Count) switch
                {
                    (false, false) => 0,
                    (true, false) => cost[i + 1, j] + OneMove,
                    (false, true) => cost[i, j + 1] + OneMove,
                    _ => Math.Min(Pair(old[i], now[j]) + cost[i + 1, j + 1], OneMove + Math.Min(cost[i + 1, j], cost[i, j + 1])),
                };
            }
        }

        var changes = new List<MoveChange>();
        for (var (i, j) = (0, 0); i < old.Count || j < now.Count;)
        {
            if (i < old.Count && j < now.Count && cost[i, j] == Pair(old[i], now[j]) + cost[i + 1, j + 1])
            {
                var shift = RoutineChange.IsSame(old[i], now[j]) ? shiftOf(old[i], now[j]) : 0;
                var kind = !RoutineChange.IsSame(old[i], now[j]) ? ChangeKind.Changed : shift == 0 ? ChangeKind.Kept : ChangeKind.Shifted;
                changes.Add(new MoveChange(kind, i++, j++, shift));
            }
            else if (i < old.Count && cost[i, j] == OneMove + cost[i + 1, j])
            {
                changes.Add(new MoveChange(ChangeKind.Dropped, i++, -1, 0));
            }
            else
            {
                changes.Add(new MoveChange(ChangeKind.Added, -1, j++, 0));
            }
        }

        return changes;
    }

    /// <summary>The fewest moves that are changed, added or dropped, whatever shifts.</summary>
    public static int Fewest(IReadOnlyList<Move> old, IReadOnlyList<Move> now) => Of(old, now, (_, _) => 0).Count(m => m.Kind >= ChangeKind.Changed);
}

namespace Generator.Solver.Completing;

/// <summary>One way in which rows fill the moves of a sketch, none of which is left out.</summary>
/// <param name="Rows">For each row the move that it fills or whose attack takes hold in it; −1 for a row that nobody wrote.</param>
internal sealed record LeastShape(IReadOnlyList<int> Rows)
{
    /// <summary>The row is the one in which an attack takes hold.</summary>
    public bool IsHold(int row) => Rows[row] >= 0 && row + 1 < Rows.Count && Rows[row + 1] == Rows[row];

    /// <summary>The row is the one in which the hero answers the attack of the row before.</summary>
    public bool IsAnswer(int row) => row > 0 && Rows[row] >= 0 && Rows[row - 1] == Rows[row];

    /// <summary>All of them with so many rows that nobody wrote and no more rows than so many; null where that is more than a few.</summary>
    /// <param name="moves">Moves of the sketch.</param>
    /// <param name="holds">Those whose attack may take hold in a row of its own.</param>
    /// <param name="fewest">Fewest rows.</param>
    /// <param name="most">Most rows.</param>
    /// <param name="added">Most of them that nobody wrote.</param>
    /// <param name="limit">How many are a few.</param>
    public static IReadOnlyList<LeastShape>? All(int moves, IReadOnlyList<int> holds, int fewest, int most, int added, int limit)
    {
        var all = new List<LeastShape>();
        return Grow([], 0) ? all : null;

        // One more row: it fills the next move, alone or with its attack before it, or nobody wrote it.
        bool Grow(List<int> rows, int next)
        {
            if (next == moves && rows.Count >= fewest)
            {
                all.Add(new LeastShape(rows));
            }

            if (all.Count > limit || rows.Count == most)
            {
                return all.Count <= limit;
            }

            var goes = next == moves || Grow([.. rows, next], next + 1);
            goes = goes && (next == moves || !holds.Contains(next) || rows.Count + 2 > most || Grow([.. rows, next, next], next + 1));
            return goes && (rows.Count(r => r < 0) >= added || Grow([.. rows, -1], next));
        }
    }
}

namespace Generator.Paperwork.Teaching;

/// <summary>Shares one day's budget among its drills: one repeat each in turn, in their order, as long as everybody's budget allows it.</summary>
public static class RepeatShare
{
    /// <param name="wanted">Repeats wanted of each drill.</param>
    /// <param name="loads">For each drill what it asks of each performer, done once.</param>
    /// <param name="budget">The most that the day may ask of each performer.</param>
    /// <returns>For each drill its repeats, and the number of the first performer whose budget allows no more; −1 when all that was wanted fits.</returns>
    public static IReadOnlyList<(int Repeats, int HeldBackBy)> Of(IReadOnlyList<int> wanted, IReadOnlyList<IReadOnlyList<Load>> loads, IReadOnlyList<Load> budget)
    {
        var repeats = new int[wanted.Count];
        var held = Enumerable.Repeat(-1, wanted.Count).ToArray();
        var used = new Load[budget.Count];
        var open = Enumerable.Range(0, wanted.Count).Where(d => wanted[d] > 0).ToList();
        while (open.Count > 0)
        {
            foreach (var drill in open.ToArray())
            {
                held[drill] = Enumerable.Range(0, budget.Count).Cast<int?>().FirstOrDefault(p => !(used[p!.Value] + loads[drill][p.Value]).FitsIn(budget[p.Value])) ?? -1;
                if (held[drill] < 0)
                {
                    repeats[drill]++;
                    for (var p = 0; p < used.Length; p++)
                    {
                        used[p] += loads[drill][p];
                    }
                }

                if (held[drill] >= 0 || repeats[drill] == wanted[drill])
                {
                    open.Remove(drill);
                }
            }
        }

        return [.. repeats.Zip(held)];
    }
}

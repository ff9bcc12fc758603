namespace Generator.Solver.Alternatives;

/// <summary>Picks from many things those that are as far apart as can be, exactly, by trying every set (Hebrard et al. 2005 call it offline diversity).</summary>
public static class DiverseSet
{
    /// <summary>Positions of the most diverse set, in order; empty when there are too few things. Of equal sets the first stands.</summary>
    /// <param name="items">How many things there are, at most some twenty.</param>
    /// <param name="number">How many to pick.</param>
    /// <param name="distance">Distance between two of them, symmetric, 0 or more.</param>
    /// <param name="goal">What makes a set diverse.</param>
    public static IReadOnlyList<int> Pick(int items, int number, Func<int, int, int> distance, DiversityGoal goal)
    {
        var table = new int[items, items];
        for (var i = 0; i < items; i++)
        {
            for (var j = i + 1; j < items; j++)
            {
                table[i, j] = table[j, i] = distance(i, j);
            }
        }

        var best = Array.Empty<int>();
        var (bestSmallest, bestSum) = (-1, -1L);
        Extend([], 0, int.MaxValue, 0);
        return best;

        void Extend(List<int> chosen, int next, int smallest, long sum)
        {
            if (chosen.Count == number)
            {
                if (IsBetter(goal, smallest, sum, bestSmallest, bestSum))
                {
                    (best, bestSmallest, bestSum) = ([.. chosen], smallest, sum);
                }

                return;
            }

            for (var item = next; item <= items - (number - chosen.Count); item++)
            {
                var nearest = chosen.Aggregate(smallest, (least, other) => Math.Min(least, table[item, other]));
                if (goal == DiversityGoal.Smallest && nearest < bestSmallest)
                {
                    continue;
                }

                var farther = sum + chosen.Sum(other => (long)table[item, other]);
                chosen.Add(item);
                Extend(chosen, item + 1, nearest, farther);
                chosen.RemoveAt(chosen.Count - 1);
            }
        }
    }

    private static bool IsBetter(DiversityGoal goal, int smallest, long sum, int bestSmallest, long bestSum) => goal == DiversityGoal.Smallest
        ? (smallest, sum).CompareTo((bestSmallest, bestSum)) > 0
        : (sum, smallest).CompareTo((bestSum, bestSmallest)) > 0;
}

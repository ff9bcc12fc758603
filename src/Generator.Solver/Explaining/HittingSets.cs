using System.Numerics;

namespace Generator.Solver.Explaining;

/// <summary>Smallest sets that share a member with each of some sets (Berge 1989): the give-ups of all clashes, and the clashes of all give-ups.</summary>
public static class HittingSets
{
    /// <summary>All minimal ones, those with fewest members first. Of no sets at all it is the empty one.</summary>
    public static IReadOnlyList<ulong> Of(IEnumerable<ulong> sets)
    {
        List<ulong> hitting = [0];
        foreach (var set in sets)
        {
            var next = new List<ulong>();
            foreach (var old in hitting)
            {
                if ((old & set) != 0)
                {
                    next.Add(old);
                    continue;
                }

                for (var rest = set; rest != 0; rest &= rest - 1)
                {
                    next.Add(old | (rest & (~rest + 1)));
                }
            }

            hitting = [.. next.Distinct().Where(s => !next.Any(o => o != s && (o & s) == o))];
        }

        return [.. hitting.OrderBy(BitOperations.PopCount).ThenBy(s => s)];
    }
}

namespace Generator.Paperwork.SafetyPapers;

/// <summary>Which moves two versions do not share, after their longest common run of moves in order.</summary>
public static class MoveChanges
{
    /// <returns>Numbers from 1: moves of the old version that are gone, and moves of the new one that are new or changed.</returns>
    public static (IReadOnlyList<int> Gone, IReadOnlyList<int> Added) Of(IReadOnlyList<string> before, IReadOnlyList<string> now)
    {
        var longest = new int[before.Count + 1, now.Count + 1];
        for (var i = before.Count - 1; i >= 0; i--)
        {
            for (var j = now.Count - 1; j >= 0; j--)
            {
                longest[i, j] = string.Equals(before[i], now[j], StringComparison.Ordinal) ? longest[i + 1, j + 1] + 1 : Math.Max(longest[i + 1, j], longest[i, j + 1]);
            }
        }

        var (gone, added) = (new List<int>(), new List<int>());
        var (a, b) = (0, 0);
        while (a < before.Count || b < now.Count)
        {
            if (a < before.Count && b < now.Count && string.Equals(before[a], now[b], StringComparison.Ordinal))
            {
                a++;
                b++;
            }
            else if (b == now.Count || (a < before.Count && longest[a + 1, b] >= longest[a, b + 1]))
            {
                gone.Add(++a);
            }
            else
            {
                added.Add(++b);
            }
        }

        return (gone, added);
    }
}

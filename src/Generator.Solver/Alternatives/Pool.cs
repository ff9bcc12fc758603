namespace Generator.Solver.Alternatives;

/// <summary>Routines to choose from, each pair compared once.</summary>
internal sealed class Pool
{
    private readonly List<Alternative> items = [];
    private readonly List<List<int>> differences = [];

    public int Count => items.Count;

    public Alternative this[int index] => items[index];

    /// <summary>Share in percent in which two of them differ.</summary>
    public int Difference(int one, int other) => differences[Math.Max(one, other)][Math.Min(one, other)];

    public void Add(Alternative item)
    {
        differences.Add([.. items.Select(i => Shape.Difference(i.Shape, item.Shape))]);
        items.Add(item);
    }

    public void RemoveAt(int index)
    {
        items.RemoveAt(index);
        differences.RemoveAt(index);
        foreach (var row in differences.Skip(index))
        {
            row.RemoveAt(index);
        }
    }

    /// <summary>The first of those with the fewest points.</summary>
    public Alternative Best() => items.MinBy(i => i.Verdict.Points) ?? throw new InvalidOperationException("The pool is empty.");

    /// <summary>The one with the most points; of several the one nearest to another.</summary>
    public int Worst() => Enumerable.Range(0, Count)
        .OrderByDescending(i => items[i].Verdict.Points)
        .ThenBy(i => Enumerable.Range(0, Count).Where(j => j != i).Select(j => Difference(i, j)).DefaultIfEmpty(0).Min())
        .First();
}

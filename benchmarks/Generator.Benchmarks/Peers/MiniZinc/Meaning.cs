namespace Generator.Benchmarks.Peers.MiniZinc;

/// <summary>What a literal of the model says: an integer variable lies in some intervals, and not outside of them.</summary>
/// <param name="Variable">Number of the variable in the model.</param>
/// <param name="Values">Least and greatest of each interval, in order, as the solver writes domains.</param>
internal sealed record Meaning(int Variable, IReadOnlyList<long> Values)
{
    public bool Holds(long value)
    {
        for (var i = 0; i < Values.Count; i += 2)
        {
            if (value >= Values[i] && value <= Values[i + 1])
            {
                return true;
            }
        }

        return false;
    }
}

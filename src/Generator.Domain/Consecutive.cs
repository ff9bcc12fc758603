namespace Generator.Domain;

/// <summary>Numbers that follow one another, told as stretches.</summary>
public static class Consecutive
{
    /// <summary>The longest stretches without a gap: 1, 2, 3, 7 are 1 to 3 and 7 to 7.</summary>
    /// <param name="numbers">Rising, each once.</param>
    public static IReadOnlyList<(int First, int Last)> Runs(IEnumerable<int> numbers)
    {
        var runs = new List<(int First, int Last)>();
        foreach (var number in numbers)
        {
            if (runs is [.., var (first, last)] && last + 1 == number)
            {
                runs[^1] = (first, number);
            }
            else
            {
                runs.Add((number, number));
            }
        }

        return runs;
    }
}

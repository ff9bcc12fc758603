namespace Generator.Rules.Shapes;

/// <summary>
/// The time from one contact to the next, and how much neighbours among these intervals differ. nPVI is the normalised pairwise variability
/// index of Grabe and Low (2002, Laboratory Phonology 7): 100 times the mean of |a − b| / ((a + b) / 2) over neighbours, 0 where all are alike, below 200.
/// Condit-Schultz (2019, Music Perception 36) found that in music it mostly says how many neighbours are equal, so that this share is
/// given beside it. Both sources from memory.
/// </summary>
/// <param name="Lengths">Half counts between contacts, each 1 or more: contacts at one moment are one.</param>
public sealed record Intervals(IReadOnlyList<int> Lengths)
{
    /// <summary>Neighbours among the intervals.</summary>
    public int Pairs => Math.Max(0, Lengths.Count - 1);

    /// <summary>Neighbours of the same length.</summary>
    public int EqualPairs => Lengths.Zip(Lengths.Skip(1)).Count(p => p.First == p.Second);

    /// <summary>Null where there are no neighbours.</summary>
    public decimal? Npvi => Pairs == 0
        ? null
        : 100m * Lengths.Zip(Lengths.Skip(1)).Sum(p => 2m * Math.Abs(p.First - p.Second) / (p.First + p.Second)) / Pairs;

    public static Intervals Of(IReadOnlyList<Contact> contacts)
    {
        var times = contacts.Select(c => c.Time).Distinct().Order().ToList();
        return new Intervals([.. times.Zip(times.Skip(1), (a, b) => b - a)]);
    }

    /// <summary>The longest run of equal intervals: how many, and the moment at which it begins.</summary>
    public static (int Count, int From) LongestRun(IReadOnlyList<Contact> contacts)
    {
        var times = contacts.Select(c => c.Time).Distinct().Order().ToList();
        var (best, from, run) = (0, 0, 0);
        for (var i = 1; i < times.Count; i++)
        {
            run = i > 1 && times[i] - times[i - 1] == times[i - 1] - times[i - 2] ? run + 1 : 1;
            (best, from) = run > best ? (run, times[i - run]) : (best, from);
        }

        return (best, from);
    }
}

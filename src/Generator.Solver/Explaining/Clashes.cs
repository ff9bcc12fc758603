namespace Generator.Solver.Explaining;

/// <summary>
/// Finds out which of some statements cannot hold together, by asking about subsets alone. A clash is shrunk by leaving out one statement after
/// the other; the give-ups come from the duality between the two (Reiter 1987): a smallest set that hits every known clash either helps, or
/// what is left holds another clash.
/// </summary>
/// <param name="count">Number of statements, at most 64.</param>
/// <param name="oracle">What is known of a subset, given as bits. More statements never make it easier.</param>
/// <param name="stop">Ends it early with what is known so far.</param>
public sealed class Clashes(int count, Func<ulong, Answer> oracle, CancellationToken stop = default)
{
    /// <summary>Give-ups that are looked for; nobody reads more.</summary>
    private const int Most = 40;

    private readonly List<ulong> solvable = [];
    private readonly List<(ulong Set, Answer Answer)> against = [];

    /// <summary>Questions that were put to the oracle.</summary>
    public int Asked { get; private set; }

    private ulong Everything => count == 64 ? ulong.MaxValue : (1UL << count) - 1;

    /// <summary>Everything that can be found out.</summary>
    public ClashReport Report()
    {
        var all = Ask(Everything);
        if (all == Answer.Solvable)
        {
            return new ClashReport { All = all, Proven = true, Complete = true };
        }

        List<ulong> clashes = [Shrink(Everything, Enumerable.Range(0, count))];
        var (giveUps, undecided) = (new List<ulong>(), new List<ulong>());
        var complete = false;
        while (!stop.IsCancellationRequested && giveUps.Count < Most)
        {
            if (HittingSets.Of(clashes).Where(h => !giveUps.Contains(h) && !undecided.Contains(h)).Select(h => (ulong?)h).FirstOrDefault() is not { } candidate)
            {
                complete = true;
                break;
            }

            var left = Ask(Everything & ~candidate);
            if (left == Answer.Solvable)
            {
                giveUps.Add(candidate);
            }
            else if (left != all || candidate == Everything)
            {
                // Where the whole is proven impossible, nothing less than a proof counts as a clash.
                undecided.Add(candidate);
            }
            else
            {
                clashes.Add(Shrink(Everything & ~candidate, Enumerable.Range(0, count)));
            }
        }

        complete &= !stop.IsCancellationRequested;
        return new ClashReport
        {
            All = all,
            Clashes = complete && undecided.Count == 0 ? [clashes[0], .. HittingSets.Of(giveUps).Where(c => c != clashes[0])] : clashes,
            GiveUps = giveUps,
            Proven = clashes.All(c => Ask(c) == Answer.Impossible),
            Complete = complete && undecided.Count == 0,
        };
    }

    /// <summary>
    /// Leaves out of a set that does not hold together whatever can be left out, in the order given. A set that is proven impossible stays so.
    /// </summary>
    public ulong Shrink(ulong set, IEnumerable<int> order)
    {
        var wanted = Ask(set);
        foreach (var statement in order)
        {
            var without = set & ~(1UL << statement);
            if (without != set && Ask(without) is var answer && answer != Answer.Solvable && (answer == wanted || wanted == Answer.Unknown) && !stop.IsCancellationRequested)
            {
                set = without;
            }
        }

        return set;
    }

    /// <summary>Asks, unless the answer follows from an earlier one.</summary>
    private Answer Ask(ulong set)
    {
        if (solvable.Any(s => (s & set) == set))
        {
            return Answer.Solvable;
        }

        if (against.Any(a => a.Answer == Answer.Impossible && (a.Set & set) == a.Set))
        {
            return Answer.Impossible;
        }

        if (against.FirstOrDefault(a => a.Set == set) is { Set: not 0 } known)
        {
            return known.Answer;
        }

        Asked++;
        var answer = oracle(set);
        if (answer == Answer.Solvable)
        {
            solvable.Add(set);
        }
        else if (!stop.IsCancellationRequested)
        {
            against.Add((set, answer));
        }

        return answer;
    }
}

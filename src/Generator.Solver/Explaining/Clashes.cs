using System.Numerics;

namespace Generator.Solver.Explaining;

/// <summary>
/// Finds out which of some statements cannot hold together, by asking about subsets alone. A clash is shrunk by leaving out one statement after
/// the other; the give-ups come from the duality between the two (Reiter 1987): a smallest set that hits every known clash either helps, or
/// what is left holds another clash.
/// </summary>
/// <param name="count">Number of statements, at most 64.</param>
/// <param name="oracle">What is known of a subset, given as bits. More statements never make it easier.</param>
/// <param name="proven">Whether a subset is proven impossible at little cost, where the oracle is dear; false means as good as nothing.</param>
/// <param name="again">Asked once nothing but unknown is left: true when the oracle will now try harder.</param>
/// <param name="stop">Ends it early with what is known so far.</param>
public sealed class Clashes(int count, Func<ulong, Answer> oracle, Func<ulong, bool>? proven = null, Func<bool>? again = null, CancellationToken stop = default)
{
    /// <summary>Give-ups that are looked for; nobody reads more.</summary>
    private const int Most = 40;

    /// <summary>So often the oracle tries harder before more is given up where less may do.</summary>
    private const int HarderFirst = 2;

    private readonly List<ulong> solvable = [];
    private readonly List<(ulong Set, Answer Answer)> against = [];
    private readonly List<ulong> cheapless = [];

    /// <summary>A clash that is known already, to begin with; 0 for none.</summary>
    public ulong First { get; init; }

    /// <summary>How far from hand it is to give something up: of as many statements what is nearest is asked about first. All alike unless said.</summary>
    public Func<ulong, int> Farness { get; init; } = _ => 0;

    /// <summary>Questions that were put to the oracle.</summary>
    public int Asked { get; private set; }

    private ulong Everything => AllOf(count);

    /// <summary>The set of so many statements, at most 64.</summary>
    public static ulong AllOf(int count) => count == 64 ? ulong.MaxValue : (1UL << count) - 1;

    /// <summary>Everything that can be found out.</summary>
    public ClashReport Report()
    {
        var all = Ask(Everything);
        if (all == Answer.Solvable)
        {
            return new ClashReport { All = all, Proven = true, Complete = true };
        }

        List<ulong> clashes = [First != 0 ? First : Shrink(Everything, Enumerable.Range(0, count))];
        var (giveUps, undecided) = (new List<ulong>(), new List<ulong>());
        var (complete, harder) = (false, 0);
        while (!stop.IsCancellationRequested && giveUps.Count < Most)
        {
            var next = HittingSets.Of(clashes).Where(h => !giveUps.Contains(h) && !undecided.Contains(h)).OrderBy(BitOperations.PopCount).ThenBy(Farness).Select(h => (ulong?)h).FirstOrDefault();
            var lessMayDo = next is { } more && harder < HarderFirst && undecided.Exists(u => BitOperations.PopCount(u) < BitOperations.PopCount(more));
            if ((next is null || lessMayDo) && undecided.Count > 0 && again?.Invoke() == true)
            {
                harder++;
                undecided.Clear();
                against.RemoveAll(a => a.Answer == Answer.Unknown);
                continue;
            }

            if (next is not { } candidate)
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
        clashes = complete && undecided.Count == 0 ? [clashes[0], .. HittingSets.Of(giveUps).Where(c => c != clashes[0])] : clashes;
        return new ClashReport
        {
            All = all,
            Clashes = clashes,
            Minimal = clashes.TrueForAll(c => Enumerable.Range(0, count).Where(i => (c & (1UL << i)) != 0).All(i => Ask(c & ~(1UL << i)) == Answer.Solvable)),
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
        List<int> left = [.. order];
        var cheap = proven is not null && wanted == Answer.Impossible && Cheap(set);
        if (proven is not null)
        {
            set = cheap ? Halve(set, left, Cheap) : wanted == Answer.Unknown ? Halve(set, left, s => Ask(s) != Answer.Solvable) : set;
        }

        foreach (var statement in left)
        {
            var without = set & ~(1UL << statement);
            if (cheap && without != set && !stop.IsCancellationRequested && Ask(Everything & ~(1UL << statement)) == Answer.Solvable)
            {
                // Then it helps in every clash; and it is one of the give-ups, which have to be found out anyway.
                continue;
            }

            if (without != set && Ask(without) is var answer && answer != Answer.Solvable && (answer == wanted || wanted == Answer.Unknown) && !stop.IsCancellationRequested)
            {
                set = without;
            }
        }

        return set;
    }

    /// <summary>Leaves out as many statements at once as can be: half of them, then half of that, down to single ones.</summary>
    private ulong Halve(ulong set, List<int> order, Func<ulong, bool> still)
    {
        List<int> open = [.. order.Where(s => (set & (1UL << s)) != 0)];
        for (var size = (open.Count + 1) / 2; size > 0; size = size == 1 ? 0 : (size + 1) / 2)
        {
            // From the back, where statements about single performers are, which clash least often.
            for (var end = open.Count; end > 0 && !stop.IsCancellationRequested; end -= size)
            {
                var part = open.GetRange(Math.Max(0, end - size), Math.Min(size, end));
                var without = part.Aggregate(set, (s, statement) => s & ~(1UL << statement));
                if (still(without) && !stop.IsCancellationRequested)
                {
                    set = without;
                    open.RemoveAll(part.Contains);
                }
            }
        }

        return set;
    }

    private bool Cheap(ulong set)
    {
        if (against.Exists(a => a.Answer == Answer.Impossible && (a.Set & set) == a.Set))
        {
            return true;
        }

        if (solvable.Exists(s => (s & set) == set) || cheapless.Exists(s => (s & set) == set))
        {
            return false;
        }

        Asked++;
        var impossible = proven!(set);
        if (impossible)
        {
            against.Add((set, Answer.Impossible));
        }
        else if (!stop.IsCancellationRequested)
        {
            cheapless.Add(set);
        }

        return impossible;
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

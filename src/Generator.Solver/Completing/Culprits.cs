using Generator.Solver.Constructing;

namespace Generator.Solver.Completing;

/// <summary>
/// Finds one after the other the moves at which something must give, for a sketch of which nearly all can stand: wherever the search sticks, each move near there is given up
/// in turn, and the one after which it comes farthest is kept.
/// </summary>
/// <param name="search">A new search that may do so much work.</param>
/// <param name="roots">Openings, new ones each time.</param>
/// <param name="last">Behind the last move.</param>
internal sealed class Culprits(Func<Effort, SketchSearch> search, Func<List<Beginning>> roots, int last)
{
    /// <summary>Moves tried with one of them given up.</summary>
    private const long EachWork = 8_000;

    /// <summary>How far before and behind the place where it sticks they are looked for, and how many are found at most.</summary>
    private const int Before = 6, Behind = 2, Most = 12;

    private static readonly int[] Ways = [Giving.Little, Giving.Everything & ~Giving.LeftOut];

    private readonly Dictionary<int, int> given = [];
    private int deepest;

    /// <summary>A filling in which little gives; null when there is none to be found like this.</summary>
    /// <param name="below">Only what costs less is wanted.</param>
    /// <param name="effort">All that may be tried.</param>
    public (Beginning, Finish)? Find(long below, Effort effort)
    {
        if (Try(below, effort, -1, 0, out deepest) is { } stands)
        {
            return stands;
        }

        while (given.Count < Most && !effort.IsSpent)
        {
            var (far, move, giving) = (deepest, -1, 0);
            foreach (var (at, way) in Ways.SelectMany(_ => Near(), (w, m) => (m, w)))
            {
                if (Try(below, effort, at, way, out var reached) is { } found)
                {
                    return found;
                }

                (far, move, giving) = reached > far ? (reached, at, way) : (far, move, giving);
            }

            if (move < 0)
            {
                return null;
            }

            given[move] = given.GetValueOrDefault(move) | giving;
            deepest = far;
        }

        return null;
    }

    /// <summary>Where it sticks, then before, then behind.</summary>
    private IEnumerable<int> Near() => Enumerable.Range(0, Before + 1).Select(i => deepest - i).Concat(Enumerable.Range(1, Behind).Select(i => deepest + i)).Where(m => m >= 0 && m < last);

    private (Beginning, Finish)? Try(long below, Effort effort, int move, int giving, out int reached)
    {
        var work = new Effort(EachWork);
        var one = search(work);
        foreach (var (at, what) in given)
        {
            one.MayGive[at] |= what;
        }

        if (move >= 0)
        {
            one.MayGive[move] |= giving;
        }

        var found = one.Run(roots(), below, 8, gives: false);
        effort.Add(work.Spent);
        reached = one.Deepest;
        return found;
    }
}

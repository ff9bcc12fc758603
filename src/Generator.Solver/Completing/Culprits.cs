using Generator.Solver.Constructing;

namespace Generator.Solver.Completing;

/// <summary>
/// Finds one after the other the things that must give, for a sketch of which nearly all can stand: wherever the search sticks, each part of each move near there is given up
/// in turn, cheapest first, and the one after which it comes farthest is kept. Each try goes on from what the search had found before that move.
/// </summary>
/// <param name="search">A new search that may do so much work.</param>
/// <param name="roots">Openings.</param>
/// <param name="steps">The moves of the sketch.</param>
internal sealed class Culprits(Func<Effort, SketchSearch> search, Func<List<Beginning>> roots, SketchStep[] steps)
{
    /// <summary>Moves tried for each move of the sketch up to where it sticks, and with one thing given up.</summary>
    private const long FirstWork = 4_000, EachWork = 8_000;

    /// <summary>How far before and behind the place where it sticks they are looked for, and how many are found at most.</summary>
    private const int Before = 6, Behind = 2, Most = 24;

    private readonly Dictionary<int, int> given = [];

    /// <summary>The best beginnings that were found before each move.</summary>
    private readonly List<Beginning>[] known = [.. Enumerable.Repeat<List<Beginning>>([], steps.Length + 1)];

    private int deepest;

    /// <summary>A filling in which little gives; null when there is none to be found like this.</summary>
    /// <param name="below">Only what costs less is wanted.</param>
    /// <param name="effort">All that may be tried.</param>
    public (Beginning, Finish)? Find(long below, Effort effort)
    {
        known[0] = roots();
        var (found, first) = Try(0, below, FirstWork * steps.Length, effort);
        Keep(first, 0);
        while (found is null && given.Count < Most && !effort.IsSpent)
        {
            (SketchSearch Search, int Move, int Giving)? farthest = null;
            foreach (var (move, giving) in Ways().TakeWhile(_ => !effort.IsSpent))
            {
                var had = given.GetValueOrDefault(move);
                given[move] = had | giving;
                (found, var reached) = Try(Math.Min(move, deepest), below, EachWork, effort);
                if (found is not null)
                {
                    return found;
                }

                given[move] = had;
                farthest = reached.Deepest > (farthest?.Search.Deepest ?? deepest) ? (reached, move, giving) : farthest;
            }

            if (farthest is not { } far)
            {
                return null;
            }

            given[far.Move] |= far.Giving;
            Keep(far.Search, Math.Min(far.Move, deepest));
        }

        return found;
    }

    private void Keep(SketchSearch search, int from)
    {
        deepest = search.Deepest;
        for (var i = from; i <= deepest; i++)
        {
            known[i] = search.Before(i);
        }
    }

    /// <summary>One part that a move says, cheapest first; then all that is cheap, then everything: where it sticks, then before, then behind.</summary>
    private IEnumerable<(int Move, int Giving)> Ways()
    {
        int[] near = [.. Enumerable.Range(0, Before + 1).Select(i => deepest - i).Concat(Enumerable.Range(1, Behind).Select(i => deepest + i)).Where(m => m >= 0 && m <= steps.Length)];
        return near.SelectMany(m => Said(m).Select(p => (Move: m, Part: p))).OrderBy(w => w.Part).Select(w => (w.Move, 1 << (int)w.Part))
            .Concat(near.Select(m => (m, Giving.Little))).Concat(near.Select(m => (m, Giving.Everything & ~Giving.LeftOut)));
    }

    /// <summary>Behind the last move something may be put in.</summary>
    private IEnumerable<SketchPart> Said(int move) => move < steps.Length ? steps[move].Said : [SketchPart.Added];

    private ((Beginning, Finish)? Found, SketchSearch Reached) Try(int from, long below, long most, Effort effort)
    {
        var work = new Effort(most);
        var one = search(work);
        foreach (var (at, what) in given)
        {
            one.MayGive[at] |= what;
        }

        var found = one.Run(known[from], below, 8, gives: false);
        effort.Add(work.Spent);
        return (found, one);
    }
}

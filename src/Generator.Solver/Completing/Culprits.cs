using Generator.Solver.Constructing;

namespace Generator.Solver.Completing;

/// <summary>
/// Finds one after the other the things that must give, for a sketch of which nearly all can stand: wherever the search sticks, each part of each move near there is given up
/// in turn. Those after which it comes farthest are gone on with, and the cheapest after which it gets on at all: what is dear goes far whether or not it is to blame. Each try goes on from all that the search had
/// found before that move.
/// </summary>
/// <param name="search">A new search that may do so much work.</param>
/// <param name="roots">Openings.</param>
/// <param name="steps">The moves of the sketch.</param>
/// <param name="again">How often it was tried before: the oftener, the more is tried with each thing given up.</param>
internal sealed class Culprits(Func<Effort, SketchSearch> search, Func<List<Beginning>> roots, SketchStep[] steps, int again)
{
    /// <summary>Moves tried for each move of the sketch up to where it sticks, and with one thing given up.</summary>
    private const long FirstWork = 4_000, EachWork = 2_000;

    /// <summary>How far before and behind the place where it sticks they are looked for, and how many are found at most.</summary>
    private const int Before = 6, Behind = 2, Most = 24;

    /// <summary>How often a try goes back from where it sticks.</summary>
    private const int Backs = 24;

    private const int MostDoublings = 3;

    private readonly List<Beginning> openings = roots();

    /// <summary>A filling in which little gives; null when there is none to be found like this.</summary>
    /// <param name="below">Only what costs less is wanted.</param>
    /// <param name="effort">All that may be tried.</param>
    public (Beginning, Finish)? Find(long below, Effort effort)
    {
        var (found, first) = Try(new Strand(null, []), (0, Giving.Nothing), below, FirstWork * steps.Length, effort);
        List<Strand> level = [first];
        for (var things = 0; found is null && level.Count > 0 && things < Most && !effort.IsSpent; things++)
        {
            List<Strand> farther = [];
            foreach (var strand in level)
            {
                foreach (var way in Ways(strand.Deepest).TakeWhile(_ => !effort.IsSpent))
                {
                    (found, var reached) = Try(strand, way, below, EachWork << Math.Min(again, MostDoublings), effort);
                    if (found is not null)
                    {
                        return found;
                    }

                    farther = reached.Deepest > strand.Deepest ? Best([.. farther, reached]) : farther;
                }
            }

            level = farther;
        }

        return found;
    }

    /// <summary>The one that comes farthest, the one that comes farthest with one part given up at a time, and the cheapest.</summary>
    private static List<Strand> Best(List<Strand> strands) => [.. new[]
    {
        strands.MaxBy(s => (s.Deepest, -s.Price)),
        strands.Where(s => s.Price < SketchPart.Technique.Price()).MaxBy(s => (s.Deepest, -s.Price)),
        strands.MinBy(s => (s.Price, -s.Deepest)),
    }.OfType<Strand>().Distinct()];

    /// <summary>One part that a move says, cheapest first; then all that is cheap, then everything: where it sticks, then before, then behind.</summary>
    private IEnumerable<(int Move, int Giving)> Ways(int deepest)
    {
        int[] near = [.. Enumerable.Range(0, Before + 1).Select(i => deepest - i).Concat(Enumerable.Range(1, Behind).Select(i => deepest + i)).Where(m => m >= 0 && m <= steps.Length)];
        return near.SelectMany(m => Said(m).Select(p => (Move: m, Part: p))).OrderBy(w => w.Part).Select(w => (w.Move, Giving.Only(w.Part)))
            .Concat(near.Select(m => (m, Giving.Little))).Concat(near.Select(m => (m, Giving.Everything & ~Giving.LeftOut)));
    }

    /// <summary>Behind the last move something may be put in.</summary>
    private IEnumerable<SketchPart> Said(int move) => move < steps.Length ? steps[move].Said : [SketchPart.Added];

    private ((Beginning, Finish)? Found, Strand Reached) Try(Strand before, (int Move, int Giving) way, long below, long most, Effort effort)
    {
        var work = new Effort(most);
        var one = search(work);
        IReadOnlyList<(int Move, int Giving)> given = [.. before.Given, way];
        foreach (var (at, what) in given)
        {
            one.MayGive[at] |= what;
        }

        if (before.Search is { } known)
        {
            one.Inherit(known, Math.Min(way.Move, known.Deepest));
        }

        var found = one.Run(openings, below, Backs, gives: false);
        effort.Add(work.Spent);
        return (found, new Strand(one, given));
    }

    /// <summary>What a search found with something given up.</summary>
    private sealed record Strand(SketchSearch? Search, IReadOnlyList<(int Move, int Giving)> Given)
    {
        public int Deepest => Search?.Deepest ?? 0;

        /// <summary>The dearest that may give, of each thing given up.</summary>
        public long Price { get; } = Given.Sum(g => Enum.GetValues<SketchPart>().Where(p => Giving.Has(g.Giving, p)).Select(p => p.Price()).LastOrDefault());
    }
}

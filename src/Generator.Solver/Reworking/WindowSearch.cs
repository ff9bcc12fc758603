using Generator.Domain;
using Generator.Rules.Replaying;
using Generator.Solver.Constructing;

namespace Generator.Solver.Reworking;

/// <summary>
/// Changes an old routine in as few places as possible: keeps it as far as the rules allow, tries every single change before the place
/// where they do not, goes on as before, and so on with a second and a third change. What is found first needs the fewest.
/// </summary>
internal sealed class WindowSearch
{
    /// <summary>Old moves before a fault at which a further change is tried; the first change is tried everywhere.</summary>
    private const int Window = 6;

    private const int LongestRetiming = 8;

    /// <summary>Beginnings with the same number of changes that are followed further, one after the other until something is found.</summary>
    private static readonly int[] Widths = [3, 12, 40];

    /// <summary>The same for a routine of a few moves, where next to everything can be tried.</summary>
    private static readonly int[] AllWidths = [3, 40, 4000];

    private const int FewMoves = 6;

    /// <summary>The same where only counts may change.</summary>
    private static readonly int[] CountWidths = [8];

    private readonly Ground ground;
    private readonly Guide guide;
    private readonly IReadOnlyList<Placement> placements;
    private readonly Expander thorough;
    private readonly Action<Finish, int> found;
    private readonly CancellationToken stop;
    private int fewest = int.MaxValue;

    /// <summary>No answer changes fewer moves than this.</summary>
    public int Bound { get; init; }

    /// <summary>Answers with more changes are not looked for.</summary>
    private int most = int.MaxValue;

    /// <param name="ground">What the search shares.</param>
    /// <param name="guide">The old routine.</param>
    /// <param name="placements">Where the attackers open.</param>
    /// <param name="found">Told of every routine that nothing forbids, with the number of moves changed.</param>
    /// <param name="stop">Ends the search.</param>
    public WindowSearch(Ground ground, Guide guide, IReadOnlyList<Placement> placements, Action<Finish, int> found, CancellationToken stop)
    {
        (this.ground, this.guide, this.placements, this.found, this.stop) = (ground, guide, placements, found, stop);
        thorough = new Expander(ground, new Dice(1), guide, thorough: true);
    }

    /// <summary>Searches with up to so many changes. True when it ended with a routine and not by a stop.</summary>
    public bool Run(int mostChanges)
    {
        var first = Keep(Roots().First(), 0, 0);
        return fewest == 0 || Deepen(first, 3, counts: true) || Deepen(first, mostChanges, counts: false);
    }

    private bool Deepen(Strand first, int mostChanges, bool counts)
    {
        var once = new List<Strand>();
        Change(first, int.MaxValue, counts, once);
        foreach (var width in counts ? CountWidths : guide.Old.Count <= FewMoves ? AllWidths : Widths)
        {
            var level = Best(once, width);
            for (var change = 2; change <= mostChanges && level.Count > 0 && !stop.IsCancellationRequested; change++)
            {
                var next = new List<Strand>();
                foreach (var strand in level)
                {
                    Change(strand, Window, counts, next);
                }

                level = Best(next, width);
            }

            if (stop.IsCancellationRequested || fewest <= Bound)
            {
                break;
            }

            most = fewest == int.MaxValue ? most : fewest - 1;
        }

        return fewest < int.MaxValue && !stop.IsCancellationRequested;
    }

    /// <summary>So many for each number of changed moves; once something was found, only those that can still end with fewer.</summary>
    private List<Strand> Best(List<Strand> strands, int width) =>
    [
        .. strands.Where(s => s.Moves <= most)
            .OrderByDescending(s => s.Next).ThenBy(s => s.Trail[^1].Track!.Min())
            .DistinctBy(s => (s.Next, s.Moves, Key(s.Trail[^1].State)))
            .GroupBy(s => s.Moves).OrderBy(g => g.Key)
            .SelectMany(g => g.Take(width)),
    ];

    private static int Key(FightState state) =>
        HashCode.Combine(state.Stance, state.Facing, state.Left, state.Right, state.Time, state.Attackers.Aggregate(0, (hash, a) => HashCode.Combine(hash, a.Posture, a.ReadyAt, a.Bearing)));

    /// <summary>Every change of one move between the end of the last one and the fault.</summary>
    private void Change(Strand strand, int window, bool counts, List<Strand> next)
    {
        var earliest = Math.Max(strand.Since, (long)strand.Next - window);
        for (var move = strand.Next; move >= earliest && !stop.IsCancellationRequested; move--)
        {
            foreach (var node in strand.Before(move).IsOpening ? Roots() : [strand.Before(move)])
            {
                if (move < guide.Old.Count)
                {
                    Follow(Retimed(node, move), move + 1, strand.Moves, next);
                }

                if (!counts && strand.Moves < most)
                {
                    Replace(node, move, strand.Moves + 1, next);
                }
            }
        }
    }

    private void Replace(Node node, int move, int moves, List<Strand> next)
    {
        var children = new List<Node>();
        thorough.Expand(node, children);
        var others = children.Where(c => move == guide.Old.Count || !guide.Old[move].IsSame(c.Row)).ToList();
        if (move < guide.Old.Count)
        {
            if (!node.IsOpening)
            {
                next.Add(Keep(node, move + 1, moves));
            }

            Follow(others, move + 1, moves, next);
        }

        Follow(others, move, moves, next);
    }

    private void Follow(IEnumerable<Node> nodes, int move, int moves, List<Strand> next)
    {
        foreach (var node in nodes)
        {
            if (stop.IsCancellationRequested)
            {
                return;
            }

            next.Add(Keep(node, move, moves));
        }
    }

    /// <summary>The same move at other counts, with another linger, or where it was left.</summary>
    private IEnumerable<Node> Retimed(Node node, int move)
    {
        var row = guide.Old[move].Row;
        if (row.Technique < 0 || (node.IsOpening && row.Attacker != node.First))
        {
            yield break;
        }

        var first = node.IsOpening ? node.FirstStart : node.State.Time;
        var last = node.IsOpening ? node.FirstStart : first + LongestRetiming;
        for (var start = first; start <= last; start++)
        {
            if ((thorough.AsWritten(node, row with { Start = start }) ?? thorough.Fitted(node, row with { Start = start })) is { } child)
            {
                yield return child;
            }
        }

        var usual = Math.Max(row.Start, first);
        foreach (var other in Others(row with { Start = usual }))
        {
            if (thorough.AsWritten(node, other) is { } child)
            {
                yield return child;
            }
        }
    }

    private IEnumerable<Row> Others(Row row)
    {
        for (var linger = 0; linger <= ground.Scene.Brief.Pace.Linger.Value && row.Attacker >= 0; linger++)
        {
            if (linger != row.Linger)
            {
                yield return row with { Linger = linger };
            }
        }

        if (row.From >= 0)
        {
            yield return row with { From = -1 };
        }
    }

    /// <summary>Goes on as the old routine does; tells of it when that reaches the end.</summary>
    private Strand Keep(Node node, int from, int moves)
    {
        var trail = new List<Node> { node };
        for (var move = from; move < guide.Old.Count; move++)
        {
            if (guide.Ways(thorough, trail[^1], move).FirstOrDefault() is not { } child)
            {
                return new Strand(trail, from, moves);
            }

            trail.Add(child);
        }

        if (!trail[^1].IsOpening && guide.EndAsWritten(ground.Scene, trail[^1]) is { } finish)
        {
            fewest = Math.Min(fewest, moves);
            most = Math.Min(most, moves);
            found(finish, moves);
        }

        return new Strand(trail, from, moves);
    }

    /// <summary>The openings, the one of the old routine first.</summary>
    private IEnumerable<Node> Roots()
    {
        foreach (var root in guide.Openings(ground, placements))
        {
            yield return root;
        }

        for (var a = 0; a < placements.Count && guide.Old.Count <= FewMoves; a++)
        {
            for (var start = 0; start <= LongestRetiming; start++)
            {
                yield return guide.Tracked(ground.Opening(placements, a, start));
            }
        }
    }
}

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
    /// <summary>Old moves before a fault at which a further change is tried.</summary>
    private const int Window = 6;

    /// <summary>The same where little is tried at each.</summary>
    private const int LongWindow = 12;

    private const int Everywhere = int.MaxValue;

    private const int FewMoves = 6;

    /// <summary>Only counts may change.</summary>
    private static readonly SearchPass[] Counts = [new(ChangesTried.Counts, Everywhere, 8)];

    /// <summary>One after the other until something is found; what is tried next may still find less.</summary>
    private static readonly SearchPass[] Passes =
    [
        new(ChangesTried.Swaps, LongWindow, 12) { IsStrict = true },
        new(ChangesTried.Swaps, Window, 12),
        new(ChangesTried.All, 1, 3),
        new(ChangesTried.All, Window, 3),
        new(ChangesTried.All, Everywhere, 12),
        new(ChangesTried.All, Everywhere, 40),
    ];

    /// <summary>The same for a routine of a few moves, where next to everything can be tried.</summary>
    private static readonly SearchPass[] AllPasses =
    [
        new(ChangesTried.Swaps, Everywhere, 12) { IsStrict = true },
        new(ChangesTried.All, Everywhere, 3),
        new(ChangesTried.All, Everywhere, 40),
        new(ChangesTried.All, Everywhere, 4000),
    ];

    private readonly Ground ground;
    private readonly Guide guide;
    private readonly IReadOnlyList<Placement> placements;
    private readonly Expander thorough;
    private readonly Variants variants;
    private readonly Action<Finish> found;
    private readonly CancellationToken stop;
    private int fewest = int.MaxValue;

    /// <summary>Moves that stay keep their counts too.</summary>
    private bool strict;

    /// <summary>No answer changes fewer moves than this.</summary>
    public int Bound { get; init; }

    /// <summary>None that changes as few moves as the best one found changes them less.</summary>
    public Func<bool> IsMildest { get; init; } = () => true;

    /// <summary>Answers with more changes are not looked for.</summary>
    private int most = int.MaxValue;

    /// <param name="ground">What the search shares.</param>
    /// <param name="guide">The old routine.</param>
    /// <param name="placements">Where the attackers open.</param>
    /// <param name="found">Told of every routine that nothing forbids.</param>
    /// <param name="stop">Ends the search.</param>
    public WindowSearch(Ground ground, Guide guide, IReadOnlyList<Placement> placements, Action<Finish> found, CancellationToken stop)
    {
        (this.ground, this.guide, this.placements, this.found, this.stop) = (ground, guide, placements, found, stop);
        thorough = new Expander(ground, new Dice(1), guide, thorough: true);
        variants = new Variants(ground.Scene, guide, thorough);
    }

    /// <summary>Searches with up to so many changes. True when it ended with a routine and not by a stop.</summary>
    public bool Run(int mostChanges)
    {
        Keep(Roots().First(), 0, 0);
        return fewest == 0 || (Bound == 0 && Deepen(3, Counts)) || Deepen(mostChanges, guide.Old.Count <= FewMoves ? AllPasses : Passes);
    }

    private bool Deepen(int mostChanges, IReadOnlyList<SearchPass> passes)
    {
        var (once, before) = (Pool(passes.Max(p => p.Width)), (SearchPass?)null);
        foreach (var pass in passes)
        {
            strict = pass.IsStrict;
            if (before is null || before with { Width = pass.Width } != pass)
            {
                once = Pool(passes.Max(p => p.Width));
                var first = Keep(Roots().First(), 0, 0);
                Change(first, once.Owed(first) > 0 && pass.Tried == ChangesTried.Swaps ? Everywhere : pass.First, pass.Tried, once);
            }

            before = pass;
            var level = once.Best(pass.Width);
            for (var change = 2; change <= mostChanges && level.Count > 0 && !stop.IsCancellationRequested; change++)
            {
                var next = Pool(pass.Width);
                foreach (var begun in level)
                {
                    Change(begun, Math.Min(pass.IsStrict ? LongWindow : Window, pass.First), pass.Tried, next);
                }

                level = next.Best(pass.Width);
            }

            // As few moves may still go with fewer counts when one is put in or left out.
            var mayBeMilder = (pass.Tried == ChangesTried.Swaps || guide.Old.Count <= FewMoves) && !IsMildest();
            if (stop.IsCancellationRequested || (fewest <= Bound && pass.Tried != ChangesTried.Swaps && !mayBeMilder))
            {
                break;
            }

            most = fewest == int.MaxValue ? most : mayBeMilder ? fewest : Math.Max(Bound, fewest - 1);
        }

        return fewest < int.MaxValue && !stop.IsCancellationRequested;
    }

    private ChangedBeginnings Pool(int width) => new(ground, guide, () => most, width);

    /// <summary>Every change of one move between the end of the last one and the fault.</summary>
    private void Change(ChangedBeginning begun, int window, ChangesTried tried, ChangedBeginnings next)
    {
        var earliest = Math.Max(begun.Since, (long)begun.Next - window);
        for (var move = begun.Next; move >= earliest && !stop.IsCancellationRequested; move--)
        {
            foreach (var node in begun.Before(move).IsOpening ? Roots(tried) : [begun.Before(move)])
            {
                if (move < guide.Old.Count && !strict)
                {
                    Follow(variants.Retimed(node, move), move + 1, begun.Moves, next);
                }

                if (tried == ChangesTried.Counts || begun.Moves >= most)
                {
                    continue;
                }

                if (tried == ChangesTried.All)
                {
                    Replace(node, move, begun.Moves + 1, next);
                }
                else if (move < guide.Old.Count)
                {
                    Follow(variants.Swapped(node, move), move + 1, begun.Moves + 1, next);
                }
            }
        }
    }

    private void Replace(Node node, int move, int moves, ChangedBeginnings next)
    {
        var children = new List<Node>();
        thorough.Expand(node, children);
        var others = children.Where(c => move == guide.Old.Count || !guide.Old[move].IsSame(c.Row)).ToList();
        if (move < guide.Old.Count)
        {
            next.Add(Keep(node, move + 1, moves));
            Follow(others, move + 1, moves, next);
        }

        Follow(others, move, moves, next);
    }

    private void Follow(IEnumerable<Node> nodes, int move, int moves, ChangedBeginnings next)
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

    /// <summary>Goes on as the old routine does; tells of it when that reaches the end.</summary>
    private ChangedBeginning Keep(Node node, int from, int moves)
    {
        var trail = new List<Node> { node };
        for (var move = from; move < guide.Old.Count; move++)
        {
            if (Next(trail[^1], move) is not { } child)
            {
                return new ChangedBeginning(trail, from, moves);
            }

            trail.Add(child);
        }

        if (!trail[^1].IsOpening && guide.EndAsWritten(ground.Scene, trail[^1]) is { } finish)
        {
            fewest = Math.Min(fewest, moves);
            most = Math.Min(most, moves);
            found(finish);
        }

        return new ChangedBeginning(trail, from, moves);
    }

    private Node? Next(Node node, int move) => !strict ? guide.Ways(thorough, node, move).FirstOrDefault()
        : guide.Old[move].Row is { Technique: >= 0 } row && row.Start >= node.State.Time && guide.Leads(node, move) == row.To ? thorough.AsWritten(node, row) : null;

    /// <summary>The openings, the one of the old routine first.</summary>
    private IEnumerable<Node> Roots(ChangesTried tried = ChangesTried.All)
    {
        foreach (var root in guide.Openings(ground, placements))
        {
            yield return root;
        }

        foreach (var root in tried == ChangesTried.Counts && guide.Old.Count > 0 ? Elsewhere() : [])
        {
            yield return guide.Tracked(root);
        }

        for (var a = 0; a < placements.Count && guide.Old.Count <= FewMoves; a++)
        {
            for (var start = 0; start <= Variants.LongestRetiming; start++)
            {
                yield return guide.Tracked(ground.Opening(placements, a, start));
            }
        }
    }

    /// <summary>The opening of the old routine with somebody in another place, as far as the brief leaves that open.</summary>
    private IEnumerable<Node> Elsewhere()
    {
        var row = guide.Old[0].Row;
        for (var a = 0; a < placements.Count; a++)
        {
            for (var turn = -Variants.FarthestRound; turn <= Variants.FarthestRound && ground.Scene.Brief.Attackers[a].Bearing is null; turn++)
            {
                if (turn != 0)
                {
                    var moved = placements.Select((p, i) => i == a ? p with { Bearing = p.Bearing + new Turn(turn) } : p).ToList();
                    var root = ground.Opening(moved, row.Attacker, row.Start);
                    if (root.Score.Forbidden == 0)
                    {
                        yield return root;
                    }
                }
            }
        }
    }
}

using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Solver.Constructing;

namespace Generator.Solver.Reworking;

/// <summary>
/// Lets the search stay close to an older routine: its moves are tried first, and each beginning carries the least cost at which it comes
/// from every beginning of the old one (edit distance), so that a move put in or taken out does not make all later ones count as changed.
/// </summary>
/// <param name="old">The older routine.</param>
/// <param name="costs">What changes cost.</param>
/// <param name="lacks">Half counts by which the older routine is too short: its moves may then wait longer, too.</param>
/// <param name="marks">Marks to which the hero must come.</param>
internal sealed class Guide(IReadOnlyList<OldMove> old, IChangeCosts costs, int lacks, IReadOnlyList<int> marks)
{
    /// <summary>Old moves tried at one node.</summary>
    private const int Tries = 4;

    /// <summary>Half counts that a move of a routine that has to last longer waits where that need not be as long as can be.</summary>
    private const int PleasantWait = 4;

    /// <summary>Ways of one old move that are kept, and how many more where it may also wait.</summary>
    private const int Kept = 3;

    private const int Waits = 2;

    private const int Horizon = 2 * MoveCosts.Move;

    private readonly int longestGap = Pace.DeadAirBreaks.Value;

    public IReadOnlyList<OldMove> Old => old;

    /// <summary>The openings of one staging with their tracks, the one of the old routine first.</summary>
    public IEnumerable<Node> Openings(Ground ground, IReadOnlyList<Placement> placements)
    {
        var roots = ground.Openings(placements);
        if (old.Count > 0 && old[0].Row is { Attacker: >= 0 } row)
        {
            roots = roots.Prepend(ground.Opening(placements, row.Attacker, row.Start));
        }

        return roots.Select(Tracked);
    }

    /// <summary>Gives an opening the track before the first move.</summary>
    public Node Tracked(Node root)
    {
        root.Track = Start();
        return root;
    }

    /// <summary>The track before the first move.</summary>
    private int[] Start()
    {
        var track = new int[old.Count + 1];
        for (var i = 0; i < old.Count; i++)
        {
            track[i + 1] = track[i] + costs.Drop(old[i]);
        }

        return track;
    }

    /// <summary>The track after one more move.</summary>
    public int[] After(Node node, in Row row) => After(node.Track!, row, row.Start - node.State.Time);

    /// <summary>The track after one more move that starts so long after the one before.</summary>
    public int[] After(int[] before, in Row row, int gap)
    {
        var after = new int[before.Length];
        var add = costs.Add(row);
        after[0] = before[0] + add;
        for (var i = 0; i < old.Count; i++)
        {
            var swapped = before[i] + costs.Swap(old[i], row, gap);
            after[i + 1] = Math.Min(swapped, Math.Min(before[i + 1] + add, after[i] + costs.Drop(old[i])));
        }

        return after;
    }

    /// <summary>What the search adds to the value of a node, in points.</summary>
    public double Value(Node node) => costs.Pull * node.Track!.Min() / MoveCosts.Move;

    /// <summary>Toll that a beginning has already run up.</summary>
    public int TollSoFar(Node node) => (costs.Point * node.Points) + node.Track!.Min();

    /// <summary>Toll of a routine that ends here.</summary>
    public int Toll(Node node, int points) => (costs.Point * points) + node.Track![^1];

    /// <summary>The routine ends here, and nobody's linger changes for it; null when that is forbidden.</summary>
    public Finish? EndAsWritten(Scene scene, Node node)
    {
        var score = node.Score.Close(scene, node.State);
        return score.Forbidden == 0 && Comes(node) ? new Finish(node, [], score.Points, Toll(node, score.Points)) : null;
    }

    private bool Comes(Node node) => MarksLeft(node, old.Count) == 0;

    /// <summary>Marks to which the hero must come and to which neither a beginning nor the old moves from one on lead.</summary>
    public int MarksLeft(Node node, int next) => marks.Count == 0 ? 0
        : marks.Except(node.Path().Where(n => !n.IsOpening).Select(n => n.Row.To)).Except(old.Skip(next).Select(m => m.Row.To)).Count();

    /// <summary>The mark to which a travel move in the place of an old one leads: where that does, but to the next where it would pass one to which nothing leads any more.</summary>
    public int Leads(Node node, int index)
    {
        var (here, to) = (node.State.Mark, old[index].Row.To);
        return to < 0 || !marks.Any(m => m > here && m < to && IsLeft(node, index + 1, m)) ? to : here + 1;
    }

    private bool IsLeft(Node node, int next, int mark) => old.Skip(next).All(m => m.Row.To != mark) && node.Path().All(n => n.IsOpening || n.Row.To != mark);

    /// <summary>Adds the children that go on as the old routine did: in its time, as soon after the last move, or as soon as possible.</summary>
    public void Follow(Expander expander, Node node, List<Node> children)
    {
        var track = node.Track!;
        var least = track.Min();
        for (var (i, tries) = (0, 0); i < old.Count && tries < Tries; i++)
        {
            if (track[i] < least + Horizon)
            {
                tries++;
                Go(expander, node, i, children);
            }
        }
    }

    /// <summary>The old move as it can be done here, the ways that change least first.</summary>
    public IEnumerable<Node> Ways(Expander expander, Node node, int index)
    {
        var row = old[index].Row;
        if (row.Technique < 0 || (node.IsOpening && row.Attacker != node.First) || Leads(node, index) != row.To)
        {
            yield break;
        }

        var time = node.State.Time;
        var tried = new HashSet<int>();
        foreach (var start in node is { IsOpening: true, First: >= 0 } ? [node.FirstStart] : Starts(expander, node, index))
        {
            if (start < time || start > time + longestGap || !tried.Add(start))
            {
                continue;
            }

            var timed = row with { Start = start };
            if ((expander.AsWritten(node, timed) ?? expander.Fitted(node, timed) ?? Cued(expander, node, timed)) is { } child)
            {
                yield return child;
            }
        }
    }

    private static Node? Cued(Expander expander, Node node, Row row) =>
        row.Cue == Cue.None && row.Attack >= 0 ? expander.Fitted(node, row with { Cue = Cue.Voice }) : null;

    private IEnumerable<int> Starts(Expander expander, Node node, int index)
    {
        var row = old[index].Row;
        var (apart, soon) = (node.State.Time + Math.Max(0, old[index].Gap), Math.Max(row.Start, node.State.Time));
        yield return row.Start;
        yield return costs.KeepsGaps ? apart : soon;
        yield return costs.KeepsGaps ? soon : apart;
        if (lacks > 0)
        {
            yield return Math.Min(apart + lacks, node.State.Time + longestGap);
            yield return apart + Math.Min(lacks, PleasantWait);
        }

        if (expander.Soonest(node, row, out _) is >= 0 and var soonest)
        {
            yield return soonest;
            yield return soonest + 1;
            yield return soonest + 2;
        }
    }

    private void Go(Expander expander, Node node, int index, List<Node> children)
    {
        var kept = 0;
        foreach (var child in Ways(expander, node, index))
        {
            children.Add(child);
            if (++kept == Kept + (lacks > 0 ? Waits : 0))
            {
                return;
            }
        }
    }
}

using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Solver.Completing;
using Generator.Solver.Constructing;

namespace Generator.Solver.Reworking;

/// <summary>Goes on as an older routine did, each move with the least that is different, and says what is.</summary>
/// <param name="scene">The brief, worked out.</param>
/// <param name="old">The older routine.</param>
/// <param name="prices">What changes cost.</param>
/// <param name="keepsGaps">A move that comes too late for its count keeps its distance from the one before; else it comes as soon as it can.</param>
internal sealed class Following(Scene scene, IReadOnlyList<OldMove> old, IPrices prices, bool keepsGaps)
{
    /// <summary>Half counts by which a move comes sooner or later after the last that are told apart where distances need not be kept.</summary>
    private const int MostForCounts = 6;

    private readonly int longestGap = Pace.DeadAirBreaks.Value;

    public IReadOnlyList<OldMove> Old => old;

    /// <summary>The openings of one staging, the one of the old routine first.</summary>
    public IEnumerable<Node> Openings(Ground ground, IReadOnlyList<Placement> placements) => old is [{ Row: { Attacker: >= 0 } row }, ..]
        ? ground.Openings(placements).Prepend(ground.Opening(placements, row.Attacker, row.Start)) : ground.Openings(placements);

    /// <summary>What it costs that a move becomes another.</summary>
    /// <param name="index">The old move.</param>
    /// <param name="now">The new one.</param>
    /// <param name="before">The fight before it.</param>
    public long Cost(int index, in Row now, Node before)
    {
        var was = old[index];
        var off = Math.Abs(now.Start - before.State.Time - was.Gap);
        return prices.Of(ChangedParts.Of(scene.Book, was.Row, now)) + (prices.Of(1 << (int)SketchPart.Count) * (keepsGaps ? Math.Min(1, off) : Math.Min(MostForCounts, off)));
    }

    /// <summary>What it costs to put a move in.</summary>
    public long CostOfAdding => prices.Of(1 << (int)SketchPart.Added);

    /// <summary>What it costs to leave one out.</summary>
    public long CostOfDropping => prices.Of(Giving.LeftOut);

    /// <summary>The routine ends here, and nobody's linger changes for it; null when that is forbidden.</summary>
    public Finish? EndAsWritten(Node node)
    {
        var score = node.Score.Close(scene, node.State);
        return score.Forbidden == 0 ? new Finish(node, [], score.Points) : null;
    }

    /// <summary>The old move as it can be done here, the ways that change least first.</summary>
    public IEnumerable<Node> Ways(Expander expander, Node node, int index)
    {
        var row = old[index].Row;
        if (row.Technique < 0 || (node.IsOpening && row.Attacker != node.First))
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
        yield return keepsGaps ? apart : soon;
        yield return keepsGaps ? soon : apart;
        if (expander.Soonest(node, row, out _) is >= 0 and var soonest)
        {
            yield return soonest;
            yield return soonest + 1;
            yield return soonest + 2;
        }
    }
}

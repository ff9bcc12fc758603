using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Solver.Constructing;

/// <summary>
/// The rest of a routine in hand, to which another way through the moves before it may lead back: the end that stays fixed while a window is
/// searched anew. It may begin after any of some moves, and its moves may come a little sooner or later than they did.
/// </summary>
internal sealed class Tail
{
    private readonly Aims aims;
    private readonly IReadOnlyList<Node> path;
    private readonly int from;
    private readonly int until;
    private readonly bool mustGain;

    /// <param name="aims">What the brief asks for.</param>
    /// <param name="path">The routine in hand, from its opening.</param>
    /// <param name="from">Index of the first node after which the tail may begin.</param>
    /// <param name="until">Index of the last; not the end of the routine.</param>
    /// <param name="mustGain">It begins only where fewer points have been counted than in the routine in hand.</param>
    public Tail(Aims aims, IReadOnlyList<Node> path, int from, int until, bool mustGain = false)
    {
        (this.aims, this.path, this.from, this.until, this.mustGain) = (aims, path, from, until, mustGain);
    }

    /// <summary>Half counts by which a window may miss the time at which the tail began.</summary>
    public const int Slack = 4;

    /// <summary>Half counts by which a move of the tail may be late for its turn of the body or its hands.</summary>
    private const int Slip = 3;

    /// <summary>Moves by which it may be missed where the brief counts moves.</summary>
    private const int MovesApart = 2;

    /// <summary>How many half counts, one after another, a locked tail is tried later by.</summary>
    private const int MostShifts = 5;

    /// <summary>Half counts by which a tail that may come freely is tried later at most.</summary>
    private const int Farthest = 24;

    /// <summary>What is asked of the tail and the moves before it; null where the tail may follow a little sooner or later, and the moves before it may be the old ones.</summary>
    public TailLock? Lock { get; init; }

    /// <summary>The last layer of the beam from which the tail may follow.</summary>
    public int LastLayer => Math.Min(aims.LastLayer, Lock is null || !aims.ByTime ? aims.LayerOf(path[until].State) + Slack : Latest(until + 1));

    /// <summary>The tail can follow neither this beginning nor a longer one.</summary>
    public bool IsPast(Node node) => Lock is not null && node.State.Time > Latest(until + 1);

    /// <summary>The latest half count at which a move of the tail may start.</summary>
    private int Latest(int index) => path[index].Row.Start is var start && Lock is null ? start + Slack : (int)Math.Min(start + (long)Farthest, Lock.Of(index).Latest);

    /// <summary>The tail may follow this beginning after a node of the routine in hand, as far as can be told at a glance: its first move is in time, and what the brief counts is as it was.</summary>
    public bool Fits(Expander expander, Node node, int after)
    {
        var joint = path[after];
        var (now, then) = (node.State, joint.State);
        return node.MomentsDone == joint.MomentsDone && node.Moment == joint.Moment && node.MomentMoves == joint.MomentMoves && now.Mark == then.Mark
            && (node.Setbacks == joint.Setbacks || aims.Scene.Brief.Setbacks is null)
            && (node.Beats == joint.Beats || aims.Scene.Brief.Pauses is null)
            && now.Moves + path.Count - 1 - after is var moves && moves >= aims.LowMoves && moves <= aims.HighMoves
            && aims.OutsIn(now) == aims.OutsIn(then)
            && (!mustGain || node.Score.Points < joint.Score.Points)
            && expander.Soonest(node, path[after + 1].Row, out _) is >= 0 and var soonest
            && soonest <= Latest(after + 1);
    }

    /// <summary>How far the situation is from the one in which the tail begins next, in points: the nearer in time, the more it counts.</summary>
    public double Apart(Node node)
    {
        var joint = path[NextJoint(node)];
        return Nearness.Apart(node.State, node.Threats, joint.State, joint.Threats);
    }

    /// <summary>The first node of the routine in hand that is no earlier than this beginning and after which the tail may begin.</summary>
    private int NextJoint(Node node)
    {
        var layer = aims.LayerOf(node.State);
        var next = from;
        while (next < until && aims.LayerOf(path[next].State) < layer)
        {
            next++;
        }

        return next;
    }

    /// <summary>The beginning with the tail behind it, in its old time or so much sooner or later; null when a rule forbids it or it costs too much.</summary>
    /// <param name="expander">Makes the children.</param>
    /// <param name="node">The beginning.</param>
    /// <param name="mayGoOn">Whether what has been joined so far is still worth going on with.</param>
    /// <param name="stuck">Where the tail followed for some moves but not to the end, the longest such beginning; else null.</param>
    public Node? Joined(Expander expander, Node node, Func<Node, bool> mayGoOn, out Node? stuck)
    {
        stuck = null;
        if (Lock is not null)
        {
            return Lock.IsAnother(node, path) && Fits(expander, node, from) ? Locked(expander, node, Lock, mayGoOn) : null;
        }

        for (var after = from; after <= until; after++)
        {
            if (IsNear(node, path[after]) && Fits(expander, node, after)
                && (Joined(expander, node, after, 0, mayGoOn, ref stuck) ?? Shifted(expander, node, after, mayGoOn, ref stuck)) is { } joined)
            {
                return joined;
            }
        }

        return null;
    }

    /// <summary>The tail at its old counts, or else as little later as it can be, or sooner.</summary>
    private Node? Locked(Expander expander, Node node, TailLock asked, Func<Node, bool> mayGoOn)
    {
        var row = path[from + 1].Row;
        var soonest = expander.Soonest(node, row, out _) - row.Start;
        var (first, last) = (Math.Max(asked.Of(from + 1).Earliest - row.Start, soonest), Latest(from + 1) - row.Start);
        Node? stuck = null;
        foreach (var shift in Enumerable.Range(Math.Max(0, first), MostShifts).TakeWhile(s => s <= last).Concat(first < 0 ? [first] : []))
        {
            if (Joined(expander, node, from, shift, mayGoOn, ref stuck) is { } joined)
            {
                return joined;
            }
        }

        return null;
    }

    private bool IsNear(Node node, Node joint) =>
        from == until || Math.Abs(aims.LayerOf(node.State) - aims.LayerOf(joint.State)) <= (aims.ByTime ? Slack : MovesApart);

    private Node? Shifted(Expander expander, Node node, int after, Func<Node, bool> mayGoOn, ref Node? stuck)
    {
        var shift = node.State.Time - path[after].State.Time;
        return shift == 0 ? null : Joined(expander, node, after, shift, mayGoOn, ref stuck);
    }

    private Node? Joined(Expander expander, Node node, int after, int shift, Func<Node, bool> mayGoOn, ref Node? stuck)
    {
        for (var i = after + 1; i < path.Count; i++)
        {
            var row = path[i].Row;
            var next = Back(node, i) is { } back ? Next(expander, node, back, row.Start + shift, Lock?.Of(i) ?? (0, int.MaxValue)) : null;
            next ??= Next(expander, node, row, row.Start + shift, Lock?.Of(i) ?? (0, int.MaxValue));
            if (next is null || !mayGoOn(next))
            {
                stuck = i > after + 1 && !(stuck?.State.Moves >= node.State.Moves) ? node : stuck;
                return null;
            }

            node = next;
        }

        return node;
    }

    /// <summary>A move of the tail for which its attacker first walks back to where they were, so that the rest is as it was; null where they are there or do not attack.</summary>
    private Row? Back(Node node, int i)
    {
        var row = path[i].Row;
        if (row.Attack < 0 || row.From >= 0)
        {
            return null;
        }

        var bearing = path[i - 1].State.Attackers[row.Attacker].Bearing;
        return node.State.Attackers[row.Attacker].Bearing == bearing ? null : row with { From = bearing };
    }

    /// <summary>The next move of the tail at its time, or a little later where feet, hands or turn need it.</summary>
    private Node? Next(Expander expander, Node node, Row row, int wanted, (int Earliest, int Latest) within)
    {
        var first = Math.Max(Math.Max(wanted, node.State.Time), within.Earliest);
        if (first - wanted > Slack || first > within.Latest)
        {
            return null;
        }

        if (Best(expander, node, row with { Start = first }) is { } inTime)
        {
            return inTime;
        }

        if (expander.Soonest(node, row, out var cue) is not (>= 0 and var soonest))
        {
            return null;
        }

        for (var start = Math.Max(first, soonest); start <= Math.Min(wanted + Slip, within.Latest); start++)
        {
            if ((start > first || cue != row.Cue) && expander.Fitted(node, row with { Start = start, Cue = cue }) is { } later)
            {
                return later;
            }
        }

        return null;
    }

    /// <summary>The move with what earlier lingers it wants; where it is locked as it is written, unless that costs points.</summary>
    private Node? Best(Expander expander, Node node, in Row row)
    {
        var fitted = expander.Fitted(node, row);
        return Lock is not null && expander.AsWritten(node, row) is { } written && !(fitted?.Score.Points < written.Score.Points) ? written : fitted;
    }
}

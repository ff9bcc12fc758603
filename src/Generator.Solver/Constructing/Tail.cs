using Generator.Domain;

namespace Generator.Solver.Constructing;

/// <summary>
/// The rest of a routine in hand, to which another way through the moves before it may lead back: the end that stays fixed while a window is
/// searched anew. Its moves may come a little sooner or later than they did.
/// </summary>
internal sealed class Tail
{
    private readonly Aims aims;
    private readonly IReadOnlyList<Node> path;
    private readonly int from;
    private readonly Node joint;
    private readonly int end;

    /// <param name="aims">What the brief asks for.</param>
    /// <param name="path">The routine in hand, from its opening.</param>
    /// <param name="from">Index of the node after which the tail begins.</param>
    public Tail(Aims aims, IReadOnlyList<Node> path, int from)
    {
        (this.aims, this.path, this.from) = (aims, path, from);
        joint = path[from];
        end = path[^1].State.Time;
    }

    /// <summary>Half counts by which a window may miss the time at which the tail began.</summary>
    public const int Slack = 4;

    /// <summary>The last layer of the beam from which the tail may follow.</summary>
    public int LastLayer => aims.ByTime ? joint.State.Time + Slack : joint.State.Moves + Slack;

    /// <summary>The tail may follow this beginning, as far as can be told at a glance: feet, hands and what the brief counts are as they were.</summary>
    public bool Fits(Node node)
    {
        var (now, then) = (node.State, joint.State);
        return Math.Abs(now.Time - then.Time) <= Slack
            && now.Stance == then.Stance && now.Left == then.Left && now.Right == then.Right && now.Bound == then.Bound && now.BoundBy == then.BoundBy
            && node.MomentsDone == joint.MomentsDone && node.Moment == joint.Moment && node.MomentMoves == joint.MomentMoves
            && (node.Setbacks == joint.Setbacks || aims.Scene.Brief.Setbacks is null)
            && (node.Beats == joint.Beats || aims.Scene.Brief.Pauses is null)
            && now.Moves + path.Count - 1 - from is var moves && moves >= aims.LowMoves && moves <= aims.HighMoves
            && aims.OutsIn(now) == aims.OutsIn(then);
    }

    /// <summary>The beginning with the tail behind it, in its old time or so much sooner or later; null when a rule forbids it or it costs too much.</summary>
    /// <param name="expander">Makes the children.</param>
    /// <param name="node">The beginning.</param>
    /// <param name="mayGoOn">Whether what has been joined so far is still worth going on with.</param>
    public Node? Joined(Expander expander, Node node, Func<Node, bool> mayGoOn)
    {
        var shift = node.State.Time - joint.State.Time;
        return Joined(expander, node, 0, mayGoOn) ?? (shift == 0 ? null : Joined(expander, node, shift, mayGoOn));
    }

    private Node? Joined(Expander expander, Node node, int shift, Func<Node, bool> mayGoOn)
    {
        if (aims.ByTime && (end + shift < aims.LowTime || end + shift > aims.HighTime))
        {
            return null;
        }

        for (var i = from + 1; i < path.Count; i++)
        {
            var row = path[i].Row;
            var start = row.Start + shift;
            if (start < node.State.Time || expander.Fitted(node, row with { Start = start }) is not { } next || !mayGoOn(next))
            {
                return null;
            }

            node = next;
        }

        return node;
    }
}

using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Rules.Memories;
using Generator.Rules.Replaying;

namespace Generator.Solver.Constructing;

/// <summary>Makes the child of a node from a move, or tells that a rule or the brief forbids it.</summary>
internal sealed class ChildMaker(Scene scene, Aims aims)
{
    private static readonly int SetbacksAt = RuleBook.IndexOf("setbacks");

    /// <summary>What the moves tried are counted on.</summary>
    public Effort Effort { get; set; } = Effort.Unlimited;

    /// <summary>The child, or null.</summary>
    /// <param name="node">Its parent.</param>
    /// <param name="state">The parent's state with the returns applied.</param>
    /// <param name="returns">Decisions about earlier moves that the move brings with it.</param>
    /// <param name="row">The move.</param>
    /// <param name="opens">It begins an exchange.</param>
    public Node? Child(Node node, FightState state, LaterReturn[] returns, in Row row, bool opens)
    {
        Effort.Add(1);
        return Goes(state, row) ? Made(node, state, returns, row, opens) : null;
    }

    /// <summary>The child that a node once was, worked out again.</summary>
    public Node Again(Node child)
    {
        var (node, row) = (child.Parent!, child.Row);
        return Made(node, Lingering.With(scene, node.State, child.LaterReturns), child.LaterReturns, row, Expander.Opens(node.State, row)) ?? throw new InvalidOperationException("A move that was possible is so no more.");
    }

    private Node? Made(Node node, FightState state, LaterReturn[] returns, in Row row, bool opens)
    {
        if (node.Score.Refuses(scene, state, row))
        {
            return null;
        }

        var step = Replay.Step(scene, state, row);
        if (step.After.Time > aims.HighTime)
        {
            return null;
        }

        step = HurtAsAsked(node, step);

        if (node.Score.Allowed(scene, step) is not { } score)
        {
            return null;
        }

        var technique = step.Technique!;
        var (done, moment, moves) = Moments(node, row);
        var child = new Node
        {
            Parent = node,
            Row = step.Row,
            State = step.After,
            Score = score,
            Placements = node.Placements,
            LaterReturns = returns,
            Anchors = Anchors(node, step),
            Lingers = Lingers(node, returns, step),
            Exchanges = opens ? Counted(node.Exchanges, row.Attacker) : node.Exchanges,
            Threats = Replay.ThreatTimes(scene, step.After),
            Setbacks = node.Setbacks + (technique.Family == Family.Setback ? 1 : 0),
            Beats = node.Beats + (technique.IsStoryPause ? 1 : 0),
            Thrown = node.Thrown + (step.Throws ? 1 : 0),
            Answered = node.Answered + (step is { Throws: true, IsAnswered: true } ? 1 : 0),
            Run = opens ? 1 : node.Run + 1,
            Bare = node.Bare + (opens && node.Run == 1 && !GoesOn(node, row) ? 1 : 0),
            MomentsDone = done,
            Moment = moment,
            MomentMoves = moves,
            Peaks = Peaks(node, step),
        };
        return aims.MayGoOn(child) ? child : null;
    }

    /// <summary>A travel move leads to another mark, and nothing else does.</summary>
    private bool Goes(FightState state, in Row row) => scene.Book.Techniques[row.Technique].Travel is null ? row.To < 0 : row.To >= 0 && row.To != state.Mark;

    /// <summary>The first setback of an act that asks for one that hurts, if it is over in time, is that one.</summary>
    private Step HurtAsAsked(Node node, Step step)
    {
        if (!aims.AsksForHurts || step is not { Technique.Family: Family.Setback, Row.Hurt: null } || scene.Plan!.ActOf(step.Start, step.Index) is var act && scene.Plan.Acts[act].Hurts is not { } asked
            || asked.Until.Value <= step.End || ((SetbacksMemory)node.Score.MemoryOf(SetbacksAt)!).HasHurt(act))
        {
            return step;
        }

        return Replay.Step(scene, step.Before, step.Row with { Hurt = new RowHurt(asked, true) });
    }

    /// <summary>The attacker of the last move comes again in a combination: it was no bare parry.</summary>
    private bool GoesOn(Node node, in Row row) => Combining.SoFar(scene, node) is { } so && so.Run.Attacker == row.Attacker;

    private static int[] Counted(int[] exchanges, int attacker)
    {
        int[] next = [.. exchanges];
        next[attacker]++;
        return next;
    }

    /// <summary>The move's own linger can put the target's return off; whoever was bumped into is fixed.</summary>
    private static int[] Anchors(Node node, Step step)
    {
        if (!step.HasTarget)
        {
            return node.Anchors;
        }

        int[] next = [.. node.Anchors];
        next[step.Row.Attacker] = step.Reaction is { Posture: not null } ? step.Index : Node.Fixed;
        if (step.Second >= 0)
        {
            next[step.Second] = Node.Fixed;
            next[step.Row.Attacker] = step.Technique!.TakesTwo ? Node.Fixed : next[step.Row.Attacker];
        }

        return next;
    }

    private int[] Lingers(Node node, LaterReturn[] returns, Step step)
    {
        var target = step.Row.Attacker;
        var room = Math.Max(0, scene.LongestLinger(step.Row) - step.Row.Linger);
        if (returns.Length == 0 && (target < 0 || node.Lingers[target] == room))
        {
            return node.Lingers;
        }

        int[] next = [.. node.Lingers];
        foreach (var later in returns)
        {
            next[later.Attacker] -= later.Row >= 0 ? later.Value : 0;
        }

        if (target >= 0)
        {
            next[target] = room;
        }

        return next;
    }

    private int Peaks(Node node, Step step)
    {
        if (aims.Arc is null)
        {
            return 0;
        }

        var shift = 3 * aims.Arc.PhaseOf(step.Start, step.Index);
        var was = (node.Peaks >> shift) & 7;
        return step.Technique!.Weight > was ? (node.Peaks & ~(7 << shift)) | (step.Technique.Weight << shift) : node.Peaks;
    }

    private (long Done, int Moment, int Moves) Moments(Node node, in Row row)
    {
        var done = Ended(node, row);
        if (node.Moment >= 0 && aims.Moments[node.Moment].Steps is var steps && steps[node.MomentMoves].IsMetBy(row, done))
        {
            return node.MomentMoves + 1 == steps.Length ? (done | (1L << node.Moment), -1, 0) : (done, node.Moment, node.MomentMoves + 1);
        }

        var longest = -1;
        for (var m = 0; m < aims.Moments.Length; m++)
        {
            var aim = aims.Moments[m];
            if ((done & (1L << m)) == 0 && aim.Steps.Length > Math.Max(1, longest < 0 ? 0 : aims.Moments[longest].Steps.Length) && aim.IsInTime(row) && aim.Steps[0].IsMetBy(row, done))
            {
                longest = m;
            }
        }

        return (done, longest, longest < 0 ? 0 : 1);
    }

    /// <summary>The moments that stand with this move: also one that lies within another, and was not looked for by itself.</summary>
    private long Ended(Node node, in Row row)
    {
        var done = node.MomentsDone;
        for (var m = 0; m < aims.Moments.Length; m++)
        {
            if ((done & (1L << m)) == 0 && EndsWith(aims.Moments[m], node, row, done))
            {
                done |= 1L << m;
            }
        }

        return done;
    }

    private static bool EndsWith(MomentAim aim, Node node, in Row row, long done)
    {
        var (last, before) = (row, node);
        for (var s = aim.Steps.Length - 1; aim.Steps[s].IsMetBy(last, done); s--)
        {
            if (s == 0)
            {
                return aim.IsInTime(last);
            }

            if (before.Parent is null)
            {
                return false;
            }

            (last, before) = (before.Row, before.Parent);
        }

        return false;
    }
}

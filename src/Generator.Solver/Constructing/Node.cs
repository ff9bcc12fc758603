using Generator.Domain;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;

namespace Generator.Solver.Constructing;

/// <summary>
/// The beginning of a routine: its last move, the node before it, and what is true and known after it. Immutable once made; what is true after it may be forgotten, and is worked out again from the
/// node before when it is asked for.
/// </summary>
internal sealed class Node
{
    private FightState? state;
    private Score? score;
    private int[]? anchors;
    private int[]? lingers;
    private int[]? exchanges;
    private int[]? threats;
    private ChildMaker? maker;

    /// <summary>The attacker has not acted yet: their return is put off by a later entrance.</summary>
    public const int AtEntrance = -1;

    /// <summary>The attacker's return cannot be put off.</summary>
    public const int Fixed = -2;

    /// <summary>Null at the opening.</summary>
    public Node? Parent { get; init; }

    public Row Row { get; init; }

    public required FightState State
    {
        get => state ?? Again().state!;
        init => state = value;
    }

    public required Score Score
    {
        get => score ?? Again().score!;
        init => (score, Points) = (value, value.Points);
    }

    /// <summary>Points so far.</summary>
    public int Points { get; private init; }

    /// <summary>Opening placements; entrances as the brief fixes them.</summary>
    public required IReadOnlyList<Placement> Placements { get; init; }

    /// <summary>Decisions about earlier moves that this one brought with it.</summary>
    public LaterReturn[] LaterReturns { get; init; } = [];

    /// <summary>At the opening: the only attacker who may come first; −1 for a beat without one.</summary>
    public int First { get; init; } = -1;

    /// <summary>At the opening: the moment of the first move.</summary>
    public int FirstStart { get; init; }

    /// <summary>For each attacker the row whose linger puts off their return, or <see cref="AtEntrance"/> or <see cref="Fixed"/>.</summary>
    public required int[] Anchors
    {
        get => anchors ?? Again().anchors!;
        init => anchors = value;
    }

    /// <summary>For each attacker the half counts by which that row may still put them off.</summary>
    public required int[] Lingers
    {
        get => lingers ?? Again().lingers!;
        init => lingers = value;
    }

    /// <summary>Exchanges of each attacker.</summary>
    public required int[] Exchanges
    {
        get => exchanges ?? Again().exchanges!;
        init => exchanges = value;
    }

    /// <summary>Threat times, <see cref="int.MaxValue"/> for those who are not active.</summary>
    public required int[] Threats
    {
        get => threats ?? Again().threats!;
        init => threats = value;
    }

    public int Setbacks { get; init; }

    public int Beats { get; init; }

    /// <summary>Blows of the hero so far, and those of them that were answered.</summary>
    public int Thrown { get; init; }

    public int Answered { get; init; }

    /// <summary>Moves of the exchange so far.</summary>
    public int Run { get; init; }

    /// <summary>Exchanges that ended after one move of the hero's.</summary>
    public int Bare { get; init; }

    /// <summary>One bit for each hero moment that stands.</summary>
    public long MomentsDone { get; init; }

    /// <summary>The hero moment stands.</summary>
    public bool HasDone(int moment) => (MomentsDone & (1L << moment)) != 0;

    /// <summary>The hero moment that is under way; −1 for none.</summary>
    public int Moment { get; init; } = -1;

    /// <summary>How many of its moves stand.</summary>
    public int MomentMoves { get; init; }

    /// <summary>Greatest weight in each phase of the arc, three bits each.</summary>
    public int Peaks { get; init; }

    /// <summary>Where an older routine is followed: the least cost at which the moves so far come from its first 0, 1, 2 … moves; null elsewhere.</summary>
    public int[]? Track { get; set; }

    /// <summary>Wishes of the run that the moves so far fulfil, one bit each.</summary>
    public ulong Wished { get; set; }

    /// <summary>What the beam sorts by: the less the better.</summary>
    public double Value { get; set; }

    /// <summary>By which the beam tells twins; set when the node is put into its layer.</summary>
    public ulong Twin { get; set; }

    public bool IsOpening => Parent is null;

    public int Depth => State.Moves;

    /// <summary>
    /// Forgets what takes memory: of all nodes that wait in a layer few are ever gone on from, and a collector has to walk through everything that the others know. Not for openings.
    /// </summary>
    /// <param name="by">Who can make it again.</param>
    public void Forget(ChildMaker by)
    {
        if (Parent is not null)
        {
            maker = by;
            (state, score, anchors, lingers, exchanges, threats) = (null, null, null, null, null, null);
        }
    }

    /// <summary>Knows again what it has forgotten: the same to the letter, so that it does not matter who asks, nor whether two do.</summary>
    private Node Again()
    {
        var again = maker!.Again(this);
        (state, score, anchors, lingers, exchanges, threats) = (again.state, again.score, again.anchors, again.lingers, again.exchanges, again.threats);
        return this;
    }

    /// <summary>All nodes from the opening to this one.</summary>
    public List<Node> Path()
    {
        var path = new List<Node>();
        for (var node = this; node is not null; node = node.Parent)
        {
            path.Add(node);
        }

        path.Reverse();
        return path;
    }

    /// <summary>Greatest weight in any of some phases of the arc.</summary>
    public int PeakIn(IReadOnlyList<int> phases)
    {
        var greatest = 0;
        foreach (var phase in phases)
        {
            greatest = Math.Max(greatest, (Peaks >> (3 * phase)) & 7);
        }

        return greatest;
    }
}

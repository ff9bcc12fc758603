namespace Generator.Solver.Constructing;

/// <summary>What is asked of a tail that is locked: when its moves start, and that something else is done before it.</summary>
/// <param name="Since">Index of the node after which the window begins.</param>
/// <param name="From">Index of the node of the tail's first move.</param>
/// <param name="Within">For each move of the tail the earliest and latest half count at which it may start.</param>
internal sealed record TailLock(int Since, int From, IReadOnlyList<(int Earliest, int Latest)> Within)
{
    /// <summary>When the move of a node of the routine in hand may start.</summary>
    public (int Earliest, int Latest) Of(int index) => Within[index - From];

    /// <summary>The moves of the window are not the old ones: at one of them somebody else attacks, or another attack or technique is done.</summary>
    public bool IsAnother(Node node, IReadOnlyList<Node> path)
    {
        var (now, then) = (node, path.Count > node.Depth ? path[node.Depth] : null);
        for (; then is not null && now.Depth > Since && now.Row is var a && then.Row is var b; (now, then) = (now.Parent!, then.Parent))
        {
            if (a.Attacker != b.Attacker || a.Attack != b.Attack || a.Technique != b.Technique)
            {
                return true;
            }
        }

        return then is null;
    }
}

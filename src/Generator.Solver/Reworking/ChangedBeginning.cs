using Generator.Solver.Constructing;

namespace Generator.Solver.Reworking;

/// <summary>A beginning with some changes, followed as the old routine goes on for as far as nothing forbids it.</summary>
/// <param name="Trail">The node before each old move from <paramref name="Since"/> on, and what all that is different up to it costs; the last one cannot go on.</param>
/// <param name="Since">The first old move at which another change may be made.</param>
/// <param name="Moves">Moves changed, put in or taken out so far.</param>
internal sealed record ChangedBeginning(IReadOnlyList<(Node Node, long Cost)> Trail, int Since, int Moves)
{
    /// <summary>The old move that cannot be kept; the number of moves when only the end is forbidden.</summary>
    public int Next => Since + Trail.Count - 1;

    /// <summary>The last node.</summary>
    public Node Last => Trail[^1].Node;

    /// <summary>What is different up to it costs.</summary>
    public long Cost => Trail[^1].Cost;

    /// <summary>The node before an old move.</summary>
    public (Node Node, long Cost) Before(int move) => Trail[move - Since];
}

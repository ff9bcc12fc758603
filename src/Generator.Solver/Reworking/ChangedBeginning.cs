using Generator.Solver.Constructing;

namespace Generator.Solver.Reworking;

/// <summary>A beginning with some changes, followed as the old routine goes on for as far as nothing forbids it.</summary>
/// <param name="Trail">The node before each old move from <paramref name="Since"/> on; the last one cannot go on.</param>
/// <param name="Since">The first old move at which another change may be made.</param>
/// <param name="Moves">Moves changed, put in or taken out so far.</param>
internal sealed record ChangedBeginning(IReadOnlyList<Node> Trail, int Since, int Moves)
{
    /// <summary>The old move that cannot be kept; the number of moves when only the end is forbidden.</summary>
    public int Next => Since + Trail.Count - 1;

    /// <summary>The node before an old move.</summary>
    public Node Before(int move) => Trail[move - Since];
}

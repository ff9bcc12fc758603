using Generator.Rules.Replaying;

namespace Generator.Solver.Reworking;

/// <summary>Every move that is another, new or gone costs the same; counts and points cost a trifle beside it.</summary>
internal sealed class MoveCosts : IChangeCosts
{
    /// <summary>One move.</summary>
    public const int Move = 100;

    private const int MostForCounts = 6;

    public int Point => 1;

    public double Pull => 8;

    public bool KeepsGaps => false;

    public int Swap(OldMove old, in Row now, int gap) => old.IsSame(now) ? Math.Min(MostForCounts, Math.Abs(gap - old.Gap)) : Move;

    public int Add(in Row now) => Move;

    public int Drop(OldMove old) => Move;
}

using Generator.Rules.Replaying;

namespace Generator.Solver.Reworking;

/// <summary>Every move that is another, new or gone costs the same, a little less where only the reaction is another; counts and points cost a trifle beside it.</summary>
internal sealed class MoveCosts : IChangeCosts
{
    /// <summary>One move.</summary>
    public const int Move = 100;

    private const int MostForCounts = 6;

    /// <summary>What it costs less when only the reaction is another.</summary>
    private const int Milder = 3;

    public int Point => 1;

    public double Pull => 8;

    public bool KeepsGaps => false;

    public int Swap(OldMove old, in Row now, int gap) => old.IsSame(now) ? Math.Min(MostForCounts, Math.Abs(gap - old.Gap))
        : old.Row.Technique == now.Technique && old.Row.Attacker == now.Attacker && old.Row.Attack == now.Attack && old.Row.To == now.To ? Move - Milder : Move;

    public int Add(in Row now) => Move;

    public int Drop(OldMove old) => Move;
}

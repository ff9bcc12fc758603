using Generator.Rules.Replaying;

namespace Generator.Solver.Reworking;

/// <summary>A move of the routine that is to be changed as little as possible.</summary>
/// <param name="Row">The move, its attacker numbered as in the new brief.</param>
/// <param name="Gap">Half counts between the end of the move before and this one.</param>
/// <param name="Note">What was written beside it.</param>
internal sealed record OldMove(Row Row, int Gap, string Note)
{
    /// <summary>The same people do the same and go to the same mark; only the counts may differ.</summary>
    public bool IsSame(in Row other) =>
        Row.Technique == other.Technique && Row.Attacker == other.Attacker && Row.Attack == other.Attack && Row.Reaction == other.Reaction && Row.To == other.To;
}

using Generator.Domain;

namespace Generator.Solver.Proving;

/// <summary>How many moves a routine of a brief can have, and when it can end.</summary>
/// <param name="FewestMoves">Fewest moves.</param>
/// <param name="MostMoves">Most moves; null when nothing limits them.</param>
/// <param name="SoonestEnd">Soonest end in half counts.</param>
/// <param name="LatestEnd">Latest end in half counts; null when nothing limits it.</param>
internal sealed record PlanSize(int FewestMoves, int? MostMoves, int SoonestEnd, int? LatestEnd)
{
    public static PlanSize Of(Brief brief, int shortestMove)
    {
        if (brief.Length is not { } length)
        {
            return new PlanSize(0, null, 0, null);
        }

        int? most = null;
        var (fewest, soonest) = (0, 0);
        int? latest = null;
        if (length.Counts is { } counts)
        {
            soonest = Math.Max(0, HalfCounts.PerCount * (counts - length.Tolerance));
            latest = HalfCounts.PerCount * (counts + length.Tolerance);
            most = latest / Math.Max(1, shortestMove);
        }

        if (length.Moves is { } moves)
        {
            var tolerance = Generator.Rules.Rules.Length.MovesTolerance(length);
            fewest = Math.Max(0, moves - tolerance);
            most = Math.Min(most ?? int.MaxValue, moves + tolerance);
        }

        return new PlanSize(fewest, most, soonest, latest);
    }
}

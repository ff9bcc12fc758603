using Generator.Rules;

namespace Generator.Solver.Constructing;

/// <summary>Chooses the move of a routine round which something else is worth trying: one that costs points, the more the likelier.</summary>
internal sealed class CostlyMoves(Ground ground, Dice dice)
{
    /// <summary>Of the choices for the sake of points of the whole those, in percent, that fall on a move on which such points hang; the others fall anywhere.</summary>
    private const int OfWholePercent = 75;

    /// <summary>Where there are acts, so often in a hundred it is one of the last moves, on which the climax hangs.</summary>
    private const int EndPercent = 60;

    private const int End = 6;

    /// <summary>Index of the node after the move; only points that need not be are looked at (<see cref="Ground.Needed"/>).</summary>
    /// <param name="best">The routine.</param>
    /// <param name="path">Its nodes.</param>
    public int Of(Finish best, List<Node> path)
    {
        var needed = ground.Needed(best);
        var at = dice.Next(Math.Max(1, best.Points - needed(best.Node)));
        if (Costing(path, needed, at) is > 0 and var spot)
        {
            return spot;
        }

        var whole = dice.Percent(OfWholePercent) ? OfWhole(path) : [];
        return whole.Count > 0 ? whole[dice.Next(whole.Count)] : 1 + dice.Next(path.Count - 1);
    }

    /// <summary>Index of the first node after which more than so many points have been counted that need not be; −1 when there is none.</summary>
    public static int Costing(List<Node> path, Func<Node, int> needed, int points) =>
        path.FindIndex(n => n.Score.Points - needed(n) > path[0].Score.Points + points);

    /// <summary>Where the arc lacks a peak, the moves among which it should be; else the openings of those who come most often, for whose sake others come too seldom.</summary>
    private List<int> OfWhole(List<Node> path)
    {
        var last = path[^1];
        if (ground.Aims.Arc is { } arc && arc.Peaks.FirstOrDefault(phases => last.PeakIn(phases) < ArcShape.PeakFrom) is { } lacking)
        {
            return [.. Enumerable.Range(1, path.Count - 1).Where(i => lacking.Contains(arc.PhaseOf(path[i].Row.Start, i - 1)))];
        }

        if (ground.Aims.Plan is not null && dice.Percent(EndPercent))
        {
            return [.. Enumerable.Range(Math.Max(1, path.Count - End), Math.Min(End, path.Count - 1))];
        }

        var most = last.Exchanges.Max();
        return [.. Enumerable.Range(1, path.Count - 1).Where(i => path[i].Row.Attacker is >= 0 and var a && last.Exchanges[a] == most && path[i].Exchanges[a] > path[i - 1].Exchanges[a])];
    }
}

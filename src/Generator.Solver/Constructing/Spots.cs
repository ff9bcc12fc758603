using Generator.Rules;

namespace Generator.Solver.Constructing;

/// <summary>Chooses the move of a routine round which something else is worth trying: one that costs points, the more the likelier.</summary>
internal sealed class Spots(Ground ground, Dice dice)
{
    /// <summary>Of the choices for the sake of points of the whole those, in percent, that fall on a move on which such points hang; the others fall anywhere.</summary>
    private const int OfWholePercent = 75;

    /// <summary>Index of the node after the move; only points that need not be are looked at (<see cref="Ground.Needed"/>).</summary>
    /// <param name="best">The routine.</param>
    /// <param name="path">Its nodes.</param>
    public int Of(Finish best, List<Node> path)
    {
        var needed = ground.Needed(best);
        var at = dice.Next(Math.Max(1, best.Points - needed(best.Node)));
        for (var i = 1; i < path.Count; i++)
        {
            if (path[i].Score.Points - needed(path[i]) > path[0].Score.Points + at)
            {
                return i;
            }
        }

        var whole = dice.Percent(OfWholePercent) ? OfWhole(path) : [];
        return whole.Count > 0 ? whole[dice.Next(whole.Count)] : 1 + dice.Next(path.Count - 1);
    }

    /// <summary>Where the arc lacks a peak, the moves among which it should be; else the openings of those who come most often, for whose sake others come too seldom.</summary>
    private List<int> OfWhole(List<Node> path)
    {
        var last = path[^1];
        if (ground.Aims.Arc is { } arc && arc.Peaks.FirstOrDefault(phases => phases.Max(last.PeakIn) < ArcShape.PeakFrom) is { } lacking)
        {
            return [.. Enumerable.Range(1, path.Count - 1).Where(i => lacking.Contains(arc.PhaseOf(path[i].Row.Start, i - 1)))];
        }

        var most = last.Exchanges.Max();
        return [.. Enumerable.Range(1, path.Count - 1).Where(i => path[i].Row.Attacker is >= 0 and var a && last.Exchanges[a] == most && path[i].Exchanges[a] > path[i - 1].Exchanges[a])];
    }
}

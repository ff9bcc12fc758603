namespace Generator.Solver.Constructing;

/// <summary>
/// Betters a routine in hand window by window: from some moves before a place that costs points to some moves after it, both ends fixed. A window
/// that costs as much as before is taken too, so that the next one begins elsewhere.
/// </summary>
internal sealed class Mending(Ground ground, Dice dice, int width)
{
    /// <summary>Moves before the place at which a window may begin: near it or, for what has its cause long before, farther back.</summary>
    private const int Near = 3;

    private const int Far = 24;

    /// <summary>Moves that a short window and a long one replace at most.</summary>
    private const int Short = 3;

    private const int Long = 8;

    private const int ShortPercent = 70;

    /// <summary>The routine after so many windows; the one in hand when none was better.</summary>
    /// <param name="best">The routine in hand.</param>
    /// <param name="windows">How many to search.</param>
    /// <param name="stop">Ends it early.</param>
    public Finish Better(Finish best, int windows, CancellationToken stop)
    {
        for (var w = 0; w < windows && best.Toll > ground.Least && !stop.IsCancellationRequested; w++)
        {
            best = Window(best, stop) ?? best;
        }

        return best;
    }

    private Finish? Window(Finish best, CancellationToken stop)
    {
        var path = best.Node.Path();
        var spot = Spot(best, path);
        var first = Math.Max(0, spot - 1 - dice.Next(dice.Percent(50) ? Near : Far));
        var last = Math.Min(path.Count - 1, first + 1 + dice.Next(dice.Percent(ShortPercent) ? Short : Long));
        var beam = new Beam(ground, dice, Math.Max(3, width / 3), 0.4 + (1.6 * dice.Unit()), best.Toll + 1, tail: last == path.Count - 1 ? null : new Tail(ground.Aims, path, last));
        return beam.Run([path[first]], static _ => { }, stop);
    }

    /// <summary>A node after which points were counted, the more the likelier; any at all for points of the whole.</summary>
    private int Spot(Finish best, List<Node> path)
    {
        var at = dice.Next(Math.Max(1, best.Points));
        for (var i = 1; i < path.Count; i++)
        {
            if (path[i].Score.Points > path[0].Score.Points + at)
            {
                return i;
            }
        }

        return 1 + dice.Next(path.Count - 1);
    }
}

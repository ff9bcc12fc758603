using Generator.Rules.Judging;

namespace Generator.Solver.Constructing;

/// <summary>
/// Betters a routine in hand window by window: from some moves before a place that costs points to some moves after it, both ends fixed. A window
/// that costs as much as before is taken too, so that the next one begins elsewhere. The longer nothing gets better, the more often a window is a
/// long one that holds the place and what led to it, or what follows. Where a hero moment is out of sight, most windows try to bring its attacker round.
/// </summary>
internal sealed class Mending(Ground ground, Dice dice)
{
    /// <summary>Moves before the place at which a window may begin: near it or, for what has its cause long before, farther back.</summary>
    private const int Near = 3;

    private const int Far = 24;

    /// <summary>Moves that a short window and a long one replace at most.</summary>
    private const int Short = 3;

    private const int Long = 8;

    private const int ShortPercent = 70;

    /// <summary>Windows without a gain for each percent of wide ones, and the most percent.</summary>
    private const int WindowsForPercent = 4;

    private const int MostWidePercent = 50;

    /// <summary>Moves that a wide window reaches to its longer side at most, and to the other.</summary>
    private const int LongSide = 16;

    private const int ShortSide = 4;

    private const int ForwardPercent = 33;

    /// <summary>Fewest nodes kept in a layer, and how many more there may be: one in six windows brings something however wide its layers are.</summary>
    private const int Narrowest = 2;

    private const int Widening = 5;

    private const int WideningEager = 12;

    /// <summary>Windows in a hundred, of those round a hero moment that no camera sees, that are there to bring its attacker into sight.</summary>
    private const int EagerPercent = 60;

    /// <summary>Moves by which such a window may become longer at most until the rest of the routine fits again.</summary>
    private const int LongerEager = 32;

    /// <summary>Other windows in a hundred that may, and their moves.</summary>
    private const int LongerPercent = 10;

    private const int Longer = 16;

    private static readonly int Sightline = RuleBook.IndexOf("sightline");

    private readonly CostlyMoves costly = new(ground, dice);
    private int idle;
    private Finish? mended;
    private Beam? window;

    /// <summary>Goes on with the window it was in, or with a new one. The routine after it; the one in hand when the window is not at its end or brought nothing.</summary>
    /// <param name="best">The routine in hand; when it is another than the last time, the old window is given up.</param>
    /// <param name="effort">After so much it stops, to go on the next time.</param>
    /// <param name="stop">Ends it early.</param>
    public Finish GoOn(Finish best, Effort effort, CancellationToken stop)
    {
        if (window is null || !ReferenceEquals(mended, best))
        {
            (window, mended) = (Window(best), best);
        }

        if (!window.GoOn(effort, static _ => { }, stop))
        {
            return best;
        }

        var after = window.Best ?? best;
        window = null;
        idle = after.Toll < best.Toll ? 0 : idle + 1;
        return after;
    }

    private Beam Window(Finish best)
    {
        var path = best.Node.Path();
        var spot = costly.Of(best, path);
        var (first, last) = Ends(path, spot);
        var isEager = IsUnseenMoment(path[spot]) && dice.Percent(EagerPercent);
        var until = Until(path, last, isEager);
        var mustGain = isEager && path[until].Score.Points > path[first].Score.Points;
        var tail = until == path.Count - 1 ? null : new Tail(ground.Aims, path, last, until, mustGain);
        var most = mustGain ? path[until].Score.Points - 1 : int.MaxValue;
        var fetching = tail is null ? null : isEager ? Fetching.Eager : Fetching.Sometimes;
        var beam = new Beam(ground, dice, Narrowest + dice.Next(isEager ? WideningEager : Widening), Beam.Noise(dice), best.Toll + 1, tail: tail, mostPoints: most, fetching: fetching);
        beam.Begin([path[first]]);
        return beam;
    }

    /// <summary>The last node after which the rest may follow: that at the end of the window or, in eager windows and now and then in others, a later one.</summary>
    private int Until(List<Node> path, int last, bool isEager)
    {
        var longer = isEager ? LongerEager : dice.Percent(LongerPercent) ? Longer : 0;
        return Math.Min(path.Count - 1, last + dice.Next(longer + 1));
    }

    private static bool IsUnseenMoment(Node node) =>
        node.Parent is { } before && node.MomentsDone != before.MomentsDone && node.Score.PointsByRule[Sightline] > before.Score.PointsByRule[Sightline];

    /// <summary>The nodes between which the moves are searched anew.</summary>
    private (int First, int Last) Ends(List<Node> path, int spot)
    {
        var first = spot - 1 - dice.Next(dice.Percent(50) ? Near : Far);
        var last = first + 1 + dice.Next(dice.Percent(ShortPercent) ? Short : Long);
        if (dice.Percent(Math.Min(MostWidePercent, idle / WindowsForPercent)))
        {
            var (back, forward) = dice.Percent(ForwardPercent) ? (ShortSide, LongSide) : (LongSide, ShortSide);
            (first, last) = (spot - 2 - dice.Next(back), spot + dice.Next(forward));
        }

        first = Math.Max(0, first);
        return (first, Math.Min(path.Count - 1, Math.Max(first + 1, last)));
    }
}

using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Replaying;

namespace Generator.Solver.Constructing;

/// <summary>
/// What a beginning is worth: the points that the rules have counted, and an estimate in points of what its situation will cost or
/// already owes: waiting, dead air, outs too early or late, shares, setbacks, beats, peaks and hero moments that are due.
/// Weights were set by measurement on random briefs.
/// </summary>
/// <param name="aims">What the brief asks for.</param>
/// <param name="fetching">How attackers are brought into sight for a hero moment; null for not at all.</param>
internal sealed class Outlook(Aims aims, Fetching? fetching)
{
    /// <summary>Half counts that one exchange keeps the hero busy.</summary>
    public const double ServiceTime = 9;

    /// <summary>Half counts that a finish needs from the opening of its exchange.</summary>
    private const double FinishTime = 8;

    /// <summary>Half counts for which somebody may be held without a cost.</summary>
    private const int LongHold = 10;

    /// <summary>Parrying and turning away is less of a fight than parrying and answering.</summary>
    private const double BareCost = 0.2;

    /// <summary>What a setback costs, in points, that its act will not have, and the part of the act in which it is not missed yet.</summary>
    private const double ActMissed = 3;

    private const double ActGrace = 0.3;

    /// <summary>What being late for a mark costs in points a half count, and the half counts that a travel move needs at the end.</summary>
    private const double TravelLate = 0.5, TravelTime = 8;

    private readonly double patience = aims.Scene.Brief.Pace.Patience.Value;
    private readonly double longestPause = aims.Scene.Brief.Pace.LongestPause.Value;
    private readonly StoryOutlook story = new(aims);
    private readonly MomentOutlook moments = new(aims, fetching);
    private readonly int cast = aims.Scene.Cast;

    public double Of(Node node, Lingering lingering)
    {
        var progress = aims.Progress(node.State);
        return node.Score.Points
            + Waiting(node, lingering)
            + DeadAir(node)
            + Outs(node, progress)
            + Shares(node, progress)
            + Dues(node, progress)
            + moments.Of(node)
            + Parked(node)
            + story.Of(node, progress)
            + Comfort(node, progress);
    }

    /// <summary>Who comes when, one after the other, and how long beyond patience the later ones will have stood by then.</summary>
    private double Waiting(Node node, Lingering lingering)
    {
        Span<(int Threat, int Most)> queue = stackalloc (int, int)[cast];
        var n = 0;
        for (var a = 0; a < cast; a++)
        {
            if (node.Threats[a] != int.MaxValue && !(a == node.State.LastTarget && node.State.Attackers[a].OpenUntil >= node.State.Time))
            {
                queue[n++] = (node.Threats[a], node.Threats[a] + lingering.Room(node, a));
            }
        }

        queue[..n].Sort(static (x, y) => x.Most.CompareTo(y.Most));
        var (at, owed) = ((double)node.State.Time, 0.0);
        for (var i = 0; i < n; i++)
        {
            at = Math.Max(at, queue[i].Threat);
            owed += Math.Max(0, at - queue[i].Most - patience);
            at += ServiceTime;
        }

        return 0.6 * owed;
    }

    private double DeadAir(Node node)
    {
        var (state, soonest) = (node.State, int.MaxValue);
        for (var a = 0; a < cast; a++)
        {
            var attacker = state.Attackers[a];
            if (attacker.Posture == Posture.Out)
            {
                continue;
            }

            if (!attacker.IsActive || attacker.OpenUntil >= state.Time)
            {
                return 0;
            }

            soonest = Math.Min(soonest, node.Threats[a]);
        }

        if (soonest == int.MaxValue)
        {
            return 0;
        }

        var silence = soonest - aims.Scene.Settle.ContactAfter.Value - state.Time - longestPause;
        return silence <= 0 ? 0 : silence + (silence + longestPause > Pace.DeadAirBreaks.Value ? 30 : 0);
    }

    private double Outs(Node node, double progress)
    {
        var done = aims.OutsIn(node.State);
        var (expected, remaining) = (0, aims.Outs - done);
        while (expected < aims.Outs && aims.OutTimes[expected] <= progress + FinishTime)
        {
            expected++;
        }

        var cost = 3.0 * Math.Max(0, done - expected);
        if (remaining > 0)
        {
            cost += 0.12 * Math.Max(0, progress - aims.OutTimes[done]);
            var end = aims.ByTime ? aims.HighTime : aims.HighMoves * Aims.Pace;
            cost += 0.7 * Math.Max(0, progress + (remaining * FinishTime) - end);
        }

        for (var a = 0; a < cast; a++)
        {
            var spare = aims.FallCaps[a] - node.State.Attackers[a].Falls;
            cost += aims.MustOut[a] && node.State.Attackers[a].OutAt < 0 && spare <= 0 ? 1.5 : 0;
        }

        return cost;
    }

    /// <summary>Exchanges that somebody still lacks to come within one of those who are in play no longer than they, against the room left.</summary>
    private double Shares(Node node, double progress)
    {
        var (lacking, spread, least, most) = (0.0, 0, int.MaxValue, 0);
        for (var a = 0; a < cast; a++)
        {
            if (aims.Scene.Brief.Attackers[a].SharePercent is not null)
            {
                continue;
            }

            least = node.State.Attackers[a].OutAt < 0 ? Math.Min(least, node.Exchanges[a]) : least;
            most = Math.Max(most, node.Exchanges[a]);
        }

        for (var a = 0; a < cast; a++)
        {
            if (aims.Scene.Brief.Attackers[a].SharePercent is { } percent)
            {
                var all = node.Exchanges.Sum();
                spread += Math.Max(0, (Math.Abs((100 * node.Exchanges[a]) - (percent * all)) - 100) / 100);
            }
            else if (node.State.Attackers[a].OutAt < 0)
            {
                lacking += Math.Max(0, most - 1 - node.Exchanges[a]);
            }
        }

        var room = Math.Max(0, (aims.Total - progress) / ServiceTime);
        return Math.Max(0, lacking - room) + (0.25 * lacking) + (0.5 * spread);
    }

    private double Dues(Node node, double progress)
    {
        var brief = aims.Scene.Brief;
        var setbacks = aims.Plan is { } plan ? InTheirActs(node, plan, progress) : Due(node.Setbacks, brief.Setbacks ?? 0, progress);
        return setbacks + Travels(node, progress) + Due(node.Beats, brief.Pauses ?? 0, progress) + Pacing(node, progress) + Peaks(node);
    }

    /// <summary>Setbacks that acts still want: owed from a part of the act on, certain to be missed after it; and, as the brief counts them, those that still must come before the end.</summary>
    private double InTheirActs(Node node, ActPlan plan, double progress)
    {
        var (there, owed) = (Aims.Setbacks(node), 0.0);
        for (var a = 0; a < plan.Acts.Count; a++)
        {
            var (lacking, begins, ends) = (plan.Acts[a].FewestSetbacks - there[a], aims.ActBegins(a), aims.ActBegins(a + 1));
            if (lacking > 0 && progress > begins)
            {
                owed += progress >= ends ? ActMissed * lacking : ActMissed * lacking * Math.Max(0, ((progress - begins) / (ends - begins)) - ActGrace);
            }
        }

        var left = (aims.Scene.Brief.Setbacks ?? 0) - node.Setbacks;
        return owed + (left > 0 && progress > aims.Total - (4 * left) ? 20 : 0);
    }

    /// <summary>Marks to which the hero should have come by now, and those that can hardly be reached any more.</summary>
    private double Travels(Node node, double progress)
    {
        var owed = 0.0;
        for (var mark = node.State.Mark + 1; mark < aims.Scene.Marks.Count; mark++)
        {
            owed += Math.Min(10, TravelLate * Math.Max(0, progress - aims.TravelDue(mark))) + (progress > aims.Total - (TravelTime * (aims.Scene.Marks.Count - mark)) ? 20 : 0);
        }

        return owed;
    }

    private double Due(int done, int wanted, double progress)
    {
        if (done >= wanted)
        {
            return 0;
        }

        var due = aims.Total * (done + 0.4) / (wanted + 0.3);
        return Math.Min(4, 0.12 * Math.Max(0, progress - due)) + (progress > aims.Total - (4 * (wanted - done)) ? 20 : 0);
    }

    /// <summary>Counts and moves both asked for: they must come out together.</summary>
    private double Pacing(Node node, double progress)
    {
        if (aims.WantedMoves is null || !aims.ByTime)
        {
            return 0;
        }

        var off = Math.Abs(aims.MovesAhead(node.State));
        return 0.5 * Math.Max(0, off - 1) * (1 + (2 * progress / aims.Total));
    }

    /// <summary>Peaks that the arc still wants: certain once their phases are past.</summary>
    private double Peaks(Node node)
    {
        if (aims.Arc is not { Peaks.Count: > 0 } arc || node.IsOpening)
        {
            return 0;
        }

        var phase = arc.PhaseOf(node.Row.Start, node.Depth - 1);
        var owed = 0.0;
        foreach (var phases in arc.Peaks)
        {
            var share = phase > phases[^1] ? 1 : phase == phases[^1] ? 0.3 : 0;
            owed += share * Math.Max(0, ArcShape.PeakFrom - node.PeakIn(phases));
        }

        return owed;
    }

    /// <summary>Somebody held for long is parked, not fought.</summary>
    private static double Parked(Node node)
    {
        var cost = 0.0;
        foreach (var attacker in node.State.Attackers)
        {
            if (!attacker.IsActive && attacker.Posture != Posture.Out)
            {
                cost += 0.15 * Math.Max(0, node.State.Time - attacker.OpenUntil - LongHold);
            }
        }

        return cost;
    }

    /// <summary>Positions from which little is possible, and exchanges of one move or of many, cost a trifle.</summary>
    private double Comfort(Node node, double progress)
    {
        var state = node.State;
        var cost = state.Stance.IsFloor() ? 0.5 : state.Stance.IsKneeling() ? 0.2 : 0;
        cost += state.Bound != Bound.Free ? 0.4 : 0;
        cost += (story.LacksLong(node) ? 0 : 0.2 * Math.Max(0, node.Run - 4)) + (BareCost * node.Bare);
        var tied = state.Left.Kind >= HandKind.Holding || state.Right.Kind >= HandKind.Holding || state.Bound != Bound.Free;
        return cost + (tied && progress > aims.Total - 8 ? 2 : 0);
    }
}

using Generator.Domain;
using Generator.Rules;
using Generator.Solver.Proving;

namespace Generator.Solver.Refuting;

/// <summary>
/// When hero moments and entrances leave time for what hangs on them. Proves that a moment is asked for before its attacker can be there, that moments cannot
/// stand beside one another within their counts, and that whoever comes in late cannot be out by the end.
/// <para>Sound because moves do not overlap: of moments that all begin within a stretch of counts, all but the last end within it too. Nobody can be met before
/// they are in, walking from where the brief has them open, or brought into a posture sooner than by the shortest moves one after the other.</para>
/// </summary>
internal static class Windows
{
    public static IEnumerable<string> Against(Workings workings)
    {
        var tasks = workings.Moments.Where(m => m.IsPossible).Select(m => (Moment: m, From: Soonest(workings, m), To: Latest(workings, m))).ToList();
        var late = tasks.Where(t => t.From > t.To).ToList();
        foreach (var (moment, from, to) in late)
        {
            yield return from == PostureRoutes.Never
                ? $"The hero moment {moment.Name} cannot be: nobody is ever where it needs them."
                : $"The hero moment {moment.Name} would have to start by count {new HalfCounts(to).ToCountText()}, but what it needs is not there before count {new HalfCounts(from).ToCountText()}.";
        }

        foreach (var from in late.Count > 0 ? [] : tasks.Select(t => t.From).Distinct().Order().ToList())
        {
            foreach (var to in tasks.Select(t => t.To).Where(t => t >= from && t != int.MaxValue).Distinct().Order())
            {
                var within = workings.Apart(tasks.Where(t => t.From >= from && t.To <= to).Select(t => t.Moment));
                var lengths = within.Select(m => m.Least(c => c.Shortest)).ToList();
                if (within.Count > 1 && lengths.Sum() - lengths.Max() > to - from)
                {
                    yield return to == from
                        ? $"{Names(within)} would all have to start at count {new HalfCounts(from).ToCountText()}, and no two moves start at once."
                        : $"{Names(within)} would all have to start between counts {new HalfCounts(from).ToCountText()} and {new HalfCounts(to).ToCountText()}, where they do not find room one after the other.";
                    yield break;
                }
            }
        }

        if (workings.Size.LatestEnd is not { } end)
        {
            yield break;
        }

        foreach (var a in workings.MustOut)
        {
            if (Soonest(workings, a)[(int)Posture.Out] is var soonest && soonest > end && soonest != PostureRoutes.Never)
            {
                yield return $"{workings.Name(a)} must be out at the end, but cannot be out before {Workings.Counts(soonest)} have passed, and the routine has {Workings.Counts(end)} at the most.";
                yield break;
            }
        }

        foreach (var from in workings.MustOut.Select(workings.InFrom).Where(f => f > 0).Distinct().Order())
        {
            if (Budget.Needed(workings, c => c.Shortest, from) is var needed && needed.Sum > end - from)
            {
                var who = workings.MustOut.Where(a => workings.InFrom(a) >= from).Select(workings.Name).ToList();
                yield return $"{Workings.List(who)} must be out at the end, but nothing can be done to {(who.Count == 1 ? "them" : "any of them")} before count {new HalfCounts(from).ToCountText()}, and {needed.What} {(needed.IsOne ? "takes" : "take")} at least {Workings.Counts(needed.Sum)} of the {Workings.Counts(Math.Max(0, end - from))} that are left.";
                yield break;
            }
        }
    }

    /// <summary>The soonest half count at which a moment can begin.</summary>
    public static int Soonest(Workings workings, WantedMoment moment)
    {
        var start = moment[0].Select(c => c.Traits.Attacker < 0 ? 0 : Soonest(workings, c)).DefaultIfEmpty(PostureRoutes.Never).Min();
        return Math.Max(start, moment.Moment.Earliest?.Value ?? 0);
    }

    private static int Latest(Workings workings, WantedMoment moment)
    {
        var last = workings.Size.LatestEnd - moment.Least(c => c.Shortest) ?? int.MaxValue;
        return Math.Min(last, moment.Moment.Latest?.Value ?? int.MaxValue);
    }

    /// <summary>The soonest start of a move on somebody: as the first that concerns them, or after the shortest moves that bring them into a posture that it needs.</summary>
    private static int Soonest(Workings workings, MoveClass move)
    {
        var attacker = move.Traits.Attacker;
        var least = Soonest(workings, attacker);
        var soonest = move.From.Contains(Posture.Ready) ? Release(workings, move, attacker) : PostureRoutes.Never;
        for (var p = 0; p < least.Length; p++)
        {
            soonest = move.From.Contains((Posture)p) ? Math.Min(soonest, least[p]) : soonest;
        }

        return soonest;
    }

    /// <summary>The soonest half count at which an attacker can be in each posture.</summary>
    private static int[] Soonest(Workings workings, int attacker) => workings.Once(nameof(Soonest), attacker, () => PostureRoutes.From(workings, attacker, (move, sofar, first) =>
    {
        var start = first ? Release(workings, move, attacker) : sofar;
        return start == PostureRoutes.Never ? start : start + move.Shortest;
    }));

    /// <summary>The soonest start of a move that is the first to concern an attacker.</summary>
    private static int Release(Workings workings, MoveClass move, int attacker)
    {
        var (scene, part) = (workings.Scene, workings.Brief.Attackers[attacker]);
        if (move.Traits.Attacker != attacker)
        {
            return workings.InFrom(attacker);
        }

        if (move.Traits.By != ComesBy.Attack)
        {
            // Nothing has opened them yet, and they still stand where they are when they come in.
            return move.Traits.By == ComesBy.Opening || (part.Distance?.Value ?? 0) > move.Farthest ? PostureRoutes.Never : part.Entrance?.Value ?? 0;
        }

        // Whoever is in from the start may set off before count 1, as far as the lead-in goes.
        var walk = scene.WalkTime(attacker, part.Distance?.Value ?? Packing.Nearest);
        var there = part.Entrance is { Value: > 0 } entrance ? entrance.Value + walk : walk - scene.Settle.LeadInMost.Value;
        return Math.Max(0, there - scene.Settle.ContactAfter.Value);
    }

    private static string Names(IReadOnlyList<WantedMoment> moments) => Workings.List([.. moments.Select(m => m.Name)]);
}

using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Rules;
using Generator.Solver.Proving;

namespace Generator.Solver.Refuting;

/// <summary>
/// What everything asked for costs at least, against what there is of it: counts, moves, falls and head-height hits of each performer. Proves that a length is too
/// short for the people who must go out, the setbacks, pauses and hero moments together, that moves are too few for it, and that falls or hits are fewer than asked for.
/// <para>Sound because no move is charged twice: one that concerns two attackers is shared between their ways out, moves that a counted moment, a setback
/// or a pause may be are free on those ways, and of moments only those count of which no move can be a part of two.</para>
/// </summary>
internal static class Budget
{
    public static IEnumerable<string> Against(Workings workings)
    {
        var (brief, size) = (workings.Brief, workings.Size);
        if (brief.Setbacks > 0 && !workings.Moves.Any(m => m.Traits.Setback))
        {
            yield return $"{Amounts.Many(brief.Setbacks.Value, "setback")} asked for, but none suits these performers and this floor.";
            yield break;
        }

        if (size.LatestEnd is { } end && Needed(workings, c => c.Shortest, 0) is var counts && counts.Sum > end)
        {
            yield return $"A length of {Workings.Counts(end)} at the most has no room for {counts.What}, which {Take(counts)} at least {Workings.Counts(counts.Sum)}.";
        }
        else if (size is { LatestEnd: { } latest, FewestMoves: > 0 } && workings.Moves.Select(m => m.Shortest).DefaultIfEmpty(0).Min() is var shortest && size.FewestMoves * shortest > latest)
        {
            yield return $"A length of {Workings.Counts(latest)} at the most has no room for {(brief.Length?.Moves is { } asked && asked > size.FewestMoves ? $"{asked} moves, or {size.FewestMoves} at the fewest" : Amounts.Many(size.FewestMoves, "move"))}, none of which lasts less than {Workings.Counts(shortest)}.";
        }

        if (brief.Length is { Counts: { }, Moves: { } few } && Filled(workings, size.MostMoves!.Value) is var filled && filled < size.SoonestEnd)
        {
            yield return $"{Amounts.Many(few, "move")}{(size.MostMoves > few ? $", or {size.MostMoves} at the most," : string.Empty)} cannot fill a length of {Workings.Counts(size.SoonestEnd)} at the least: the longest lasts {Workings.Counts(Longest(workings))}, nothing may happen for {Workings.Counts(Pace.DeadAirBreaks.Value)} at the most, so all is over after {Workings.Counts(filled)}.";
        }

        if (brief.Length?.Moves is not null && size.MostMoves is { } most && Needed(workings, _ => 1, 0) is var moves && moves.Sum > most)
        {
            yield return $"A length of {Amounts.Many(most, "move")} at the most has no room for {moves.What}, which {Take(moves)} at least {Amounts.Many(moves.Sum, "move")}.";
        }

        foreach (var a in Enumerable.Range(0, workings.Scene.Cast))
        {
            if (Own(workings, a, c => c.Falls) is var falls && falls > Exposure.FallCap(brief, brief.Attackers[a]))
            {
                yield return $"{workings.Name(a)} falls at least {Times(falls)} in what is asked for, and may {May(Exposure.FallCap(brief, brief.Attackers[a]), "fall")}.";
            }

            if (Own(workings, a, c => c.HeadHit) is var hits && hits > Exposure.HeadHitCap(brief))
            {
                yield return $"{workings.Name(a)} takes at least {Amounts.Many(hits, "head-height hit")} in what is asked for, and may take {(Exposure.HeadHitCap(brief) is > 0 and var cap ? $"{cap} a run" : "none")}.";
            }
        }

        if (Own(workings, -1, c => c.HeroFalls) is var heroFalls && heroFalls > Exposure.FallCap(brief, brief.Hero))
        {
            yield return $"{brief.Hero.Name} falls at least {Times(heroFalls)} in what is asked for, and may {May(Exposure.FallCap(brief, brief.Hero), "fall")}.";
        }

        if (Own(workings, -1, c => c.HeroHeadHit) is var heroHits && heroHits > Exposure.HeadHitCap(brief))
        {
            yield return $"{brief.Hero.Name} takes at least {Amounts.Many(heroHits, "head-height hit")} in what is asked for, and may take {(Exposure.HeadHitCap(brief) is > 0 and var cap ? $"{cap} a run" : "none")}.";
        }
    }

    /// <summary>The latest end, in half counts, that so many moves can have: each as long as the longest, and as late after the one before as may be.</summary>
    private static int Filled(Workings workings, int moves) =>
        (int)Math.Min(int.MaxValue, workings.Scene.LatestOfAll + ((long)moves * Longest(workings)) + ((long)Math.Max(0, moves - 1) * Pace.DeadAirBreaks.Value));

    private static int Longest(Workings workings) => workings.Moves.Select(m => m.Longest).DefaultIfEmpty(0).Max();

    /// <summary>The least that all costs together that has to happen from a half count on.</summary>
    /// <param name="workings">The brief.</param>
    /// <param name="cost">Of a move.</param>
    /// <param name="from">Only people who are not in before, and moments that do not begin before; 0 for everything.</param>
    public static (int Sum, string What, bool IsOne) Needed(Workings workings, Func<MoveClass, int> cost, int from)
    {
        var brief = workings.Brief;
        var moments = workings.Apart(workings.Moments.Where(m => m.IsPossible && (from == 0 || Windows.Soonest(workings, m) >= from)));
        var bits = moments.Aggregate(0UL, (all, m) => all | m.Bits);
        bool Story(MoveTraits t) => from == 0 && ((t.Setback && brief.Setbacks > 0) || (t.Pause && brief.Pauses > 0));
        var halves = 0;
        var out_ = workings.MustOut.Where(a => from == 0 || workings.InFrom(a) >= from).ToList();
        foreach (var a in out_)
        {
            var way = PostureRoutes.From(workings, a, c => (c.Traits.Wanted & bits) != 0 || Story(c.Traits) ? 0 : c.Traits.Second == SecondRole.None ? 2 * cost(c) : cost(c))[(int)Posture.Out];
            halves += way == PostureRoutes.Never ? 0 : way;
        }

        var (setbacks, pauses) = from > 0 ? (0, 0) : (brief.Setbacks ?? 0, brief.Pauses ?? 0);
        var sum = ((halves + 1) / 2) + moments.Sum(m => m.Least(cost))
            + Rest(workings, cost, setbacks - moments.Sum(m => m.ThatMayBe(t => t.Setback)), t => t.Setback)
            + Rest(workings, cost, pauses - moments.Sum(m => m.ThatMayBe(t => t.Pause)), t => t.Pause);
        string[] parts =
        [
            .. out_.Count > 0 ? [out_.Count == 1 ? $"{workings.Name(out_[0])} out" : $"{out_.Count} attackers out"] : Array.Empty<string>(),
            .. setbacks > 0 ? [Amounts.Many(setbacks, "setback")] : Array.Empty<string>(),
            .. pauses > 0 ? [Amounts.Many(pauses, "pause")] : Array.Empty<string>(),
            .. moments.Count > 0 ? [moments.Count == 1 ? $"the hero moment {moments[0].Name}" : $"{moments.Count} hero moments"] : Array.Empty<string>(),
        ];
        return (sum, Workings.List(parts), parts.Length == 1 && (out_.Count == 1 || moments.Count == 1));
    }

    private static int Rest(Workings workings, Func<MoveClass, int> cost, int number, Func<MoveTraits, bool> of) =>
        number <= 0 ? 0 : number * workings.Moves.Where(m => of(m.Traits)).Select(cost).DefaultIfEmpty(0).Min();

    /// <summary>How often something happens to one performer at least: in the moments, and on their cheapest way out beside those.</summary>
    private static int Own(Workings workings, int attacker, Func<MoveTraits, bool> happens)
    {
        bool Happens(MoveTraits t) => happens(t) && (attacker < 0 || t.Attacker == attacker);

        // A move on another that takes them along does it to both.
        bool Befalls(MoveTraits t) => happens(t) && (t.Attacker == attacker || t.Second == SecondRole.Taken);
        var moments = workings.Apart(workings.Moments.Where(m => m.IsPossible).OrderByDescending(Count));
        var bits = moments.Aggregate(0UL, (all, m) => all | m.Bits);
        if (attacker < 0)
        {
            return moments.Sum(Count);
        }

        var beside = PostureRoutes.From(workings, attacker, c => (c.Traits.Wanted & bits) == 0 && Befalls(c.Traits) ? 1 : 0)[(int)Posture.Out];
        var most = moments.Sum(Count) + (workings.IsToBeOut(attacker) && beside != PostureRoutes.Never ? beside : 0);

        // What a moment finds somebody in may cost as much as the moment itself.
        var least = PostureRoutes.From(workings, attacker, c => Befalls(c.Traits) ? 1 : 0);
        return workings.Moments.Where(m => m.IsPossible).Select(m => Enumerable.Range(0, m.Moment.Moves.Count).Max(i => m[i].Min(c => Until(c, least)))).Append(most).Max();

        int Until(MoveClass c, int[] before) => c.Traits.Attacker != attacker
            ? 0
            : (Happens(c.Traits) ? 1 : 0) + (c.From.Contains(Posture.Ready) ? 0 : Enumerable.Range(0, before.Length).Where(p => before[p] != PostureRoutes.Never && c.From.Contains((Posture)p)).Select(p => before[p]).DefaultIfEmpty(0).Min());

        int Count(WantedMoment m) => m.Least(c => Happens(c.Traits) ? 1 : 0);
    }

    private static string Take((int Sum, string What, bool IsOne) needed) => needed.IsOne ? "takes" : "take";

    private static string May(int cap, string what) => cap == 0 ? $"not {what} at all" : $"{what} {Times(cap)} a run";

    private static string Times(int number) => number switch { 1 => "once", 2 => "twice", _ => $"{number} times" };
}

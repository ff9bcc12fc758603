using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Bodies;
using Generator.Solver.Filling;
using Google.OrTools.Sat;

namespace Generator.Solver.Rules;

/// <summary>
/// Finds in an answer who comes too near to whom, and says what of the answer it hangs on: places, lengths of moves, and how much later one move begins than the other. A clause rules out all
/// answers that agree in that, for every such time at which the two still meet.
/// </summary>
internal sealed class FloorClashes(ModelAnswer answer)
{
    /// <summary>Half counts by which one of two moves is tried sooner and later.</summary>
    public const int Neighbours = 40;

    private readonly MoveModel model = answer.Model;
    private readonly FloorWays ways = FloorWays.Of(answer);
    private readonly Settle settle = answer.Model.Scene.Settle;

    /// <summary>One clause for each two who clash in a row.</summary>
    public IEnumerable<IReadOnlyList<ILiteral>> Of(FloorConcern concern)
    {
        foreach (var deed in ways.Deeds)
        {
            var mine = deed.Legs();
            for (var b = 0; b < model.Cast; b++)
            {
                var other = ways.Deeds.FirstOrDefault(d => d.Attacker == b && d.Slot.Index == deed.Slot.Index);
                if (b == deed.Attacker || (other is not null && b < deed.Attacker))
                {
                    continue;
                }

                if (other is not null)
                {
                    if (InOneRow(concern, deed, other) is not null)
                    {
                        yield return Pinned(deed.Slot.Index);
                    }
                }
                else if (Clash(concern, mine, ways.Before(b, deed.Slot.Index).Chain()) is { } leg)
                {
                    yield return Clause(concern, deed, b, leg) ?? Pinned(deed.Slot.Index);
                }
            }
        }
    }

    /// <summary>Two whom a row concerns are only held against each other as it leaves them; whoever is led meanwhile is, with what they did before as well.</summary>
    private Leg? InOneRow(FloorConcern concern, FloorDeed one, FloorDeed other) => one.Treatment is not null && other.Treatment is not null
        ? Clash(concern, one.Legs().Where(l => l.IsTheEnd), other.After.Chain().Where(l => l.IsTheEnd), bothMove: true)
        : Clash(concern, one.Legs(), other.After.Chain()) ?? Clash(concern, one.After.Chain(), other.Legs());

    /// <summary>One clause for each body that comes to lie where the floor is not clear.</summary>
    public IEnumerable<IReadOnlyList<ILiteral>> OffTheFloor() =>
        ways.Deeds.Where(d => d.Legs().Any(l => l.Lies && !(model.Scene.Floor.Holds(l.Start) && model.Scene.Floor.Holds(l.End)))).Select(d => Pinned(d.Slot.Index));

    /// <summary>One clause for each whom a row brings down beside the mats of a hard floor.</summary>
    public IEnumerable<IReadOnlyList<ILiteral>> BesideTheMats()
    {
        var scene = model.Scene;
        return !scene.Mats.Matter ? [] : ways.Deeds
            .Where(d => d.Treatment is { Reaction: >= 0 and var r, Technique: not null } && scene.Book.Reactions[r].Surface == SurfaceNeed.Mat && !Fallen(d).All(l => scene.Mats.Hold(l.Start, l.End)))
            .Select(d => Pinned(d.Slot.Index));

        static IEnumerable<Leg> Fallen(FloorDeed deed)
        {
            List<Leg> legs = [.. deed.Legs()];
            return legs.Find(l => l.Lies) is { } body ? [body] : legs.Where(l => l.Kind.IsSent()).DefaultIfEmpty(Leg.Always(deed.After.End));
        }
    }

    /// <summary>One clause for each who is led or turned with to where the floor does not reach so far, or past there.</summary>
    public IEnumerable<IReadOnlyList<ILiteral>> LedOffTheFloor()
    {
        foreach (var deed in ways.Deeds.Where(d => d.Treatment is null))
        {
            var (from, way, distance) = (deed.Motion.Stands.Bearing, deed.Motion.SentRound, deed.Motion.Ends.Distance);
            if (Enumerable.Range(1, Math.Abs(way)).Any(i => distance > model.Scene.Floor[from + (Math.Sign(way) * i)]))
            {
                var clause = new FloorClause(answer);
                clause.Literals.AddRange([deed.Slot.Targets[deed.Attacker], deed.Slot.Seconds[deed.Attacker]]);
                clause.Same(deed.Slot.Before.Attackers[deed.Attacker].Bearing);
                clause.Same(deed.Slot.After.Attackers[deed.Attacker].Bearing);
                clause.AtLeast(deed.Slot.After.Attackers[deed.Attacker].Distance, distance);
                yield return clause.Literals;
            }
        }
    }

    /// <summary>One clause for each who would set off for a blow before they have come to where they were sent: somebody who was met while still under way goes on from there.</summary>
    public IEnumerable<IReadOnlyList<ILiteral>> StillUnderWay() =>
        ways.Deeds.Where(d => d.Motion.ComesIn && d.Before.Arrives > d.Motion.Leaves && answer.Value(d.Slot.Before.Attackers[d.Attacker].Active) == 1).Select(d => Pinned(d.Slot.Index));

    /// <summary>Rules out the rows up to one as they are.</summary>
    public List<ILiteral> Pinned(int last)
    {
        var clause = new FloorClause(answer);
        for (var a = 0; a < model.Cast; a++)
        {
            clause.Same(model.Start.Attackers[a].Bearing);
            clause.Same(model.Start.Attackers[a].Distance);
            clause.Same(model.Entrances[a]);
            clause.Same(model.Delays[a]);
        }

        foreach (var slot in model.Slots.Where(s => s.Index <= last))
        {
            clause.Chosen([.. slot.Uses, .. slot.Attacks, .. slot.Reactions, .. slot.Targets]);
            clause.Same(slot.Start);
            clause.Same(slot.TargetBearing);
            clause.Same(slot.Linger);
        }

        return clause.Literals;
    }

    /// <summary>Null where what they hang on cannot be told in short.</summary>
    private List<ILiteral>? Clause(FloorConcern concern, FloorDeed mine, int b, Leg met)
    {
        var theirs = ways.Last(b, mine.Slot.Index);
        if (!IsPlain(mine) || (theirs is not null && !IsPlain(theirs)) || (theirs is not null && met.Move != theirs.Motion.Move))
        {
            return null;
        }

        IReadOnlyList<Leg> legs = theirs is null ? [.. ways.Openings[b].Chain()] : [.. theirs.Motion.Legs()];
        var parts = Parts(mine).Where(p => Meets(concern, p.Motion, p.Reacts, legs)).ToList();
        if (parts.Count == 0)
        {
            return null;
        }

        var (motion, comes, reacts) = parts[0];
        var clause = new FloorClause(answer);
        clause.Acts(mine, comes, reacts);
        if (theirs is not null)
        {
            clause.Acts(theirs, true, true);
        }
        else
        {
            clause.Same(model.Entrances[b]);
        }

        clause.StaysPut(b, theirs?.Slot.Index ?? -1, mine.Slot);
        When(clause, concern, motion, reacts, legs, mine.Slot, theirs?.Slot);
        return clause.Literals;
    }

    /// <summary>The way in, or what the technique does, where one of them is enough to clash.</summary>
    private static IEnumerable<(Motion Motion, bool Comes, bool Reacts)> Parts(FloorDeed deed)
    {
        if (deed.Motion is { ComesIn: true, Reacts: true })
        {
            yield return (deed.Motion.WayIn, true, false);
            yield return (deed.Motion.Sending, false, true);
        }

        yield return (deed.Motion, true, true);
    }

    /// <summary>A row on its target that leaves nobody lying as they lay, finds nobody under way, and in which nobody sets off later than they would like to; of a follow-up, the one before as well.</summary>
    public bool IsPlain(FloorDeed deed) =>
        deed is { IsTarget: true, IsLate: false, Treatment: { Lay: false } treatment }
        && (!deed.Motion.ComesIn || (treatment with { Soonest = int.MinValue }).Motion(model.Scene).Leaves == deed.Motion.Leaves)
        && (treatment.Attack is not null || ways.Last(deed.Attacker, deed.Slot.Index) is not { } last || IsPlain(last));

    /// <summary>How much sooner and later the row may be and still clash.</summary>
    private void When(FloorClause clause, FloorConcern concern, Motion motion, bool reacts, IReadOnlyList<Leg> legs, SlotVars mine, SlotVars? theirs)
    {
        if (legs.All(l => double.IsInfinity(l.From) && double.IsInfinity(l.To)))
        {
            return;
        }

        var (soonest, latest) = (0, 0);
        while (soonest > -Neighbours && Meets(concern, motion.Later(soonest - 1), reacts, legs))
        {
            soonest--;
        }

        while (latest < Neighbours && Meets(concern, motion.Later(latest + 1), reacts, legs))
        {
            latest++;
        }

        // Whoever stays where they are for ever is met at any later time as well.
        var begins = motion.ComesIn ? motion.Leaves : motion.Taken;
        var forEver = latest == Neighbours && legs.Any(l => double.IsInfinity(l.To) && l.From <= begins + latest);
        clause.Between(mine.Start, theirs?.Start, soonest, forEver ? null : latest);
    }

    /// <summary>Without what the technique does it is not known how long they stay where the blow was.</summary>
    private bool Meets(FloorConcern concern, Motion motion, bool reacts, IReadOnlyList<Leg> legs) => Clash(concern, motion.Legs().Where(l => reacts || l.Kind == LegKind.Comes), legs) is not null;

    /// <summary>The leg of the others that is met.</summary>
    private Leg? Clash(FloorConcern concern, IEnumerable<Leg> mine, IEnumerable<Leg> theirs, bool bothMove = false)
    {
        foreach (var one in mine)
        {
            foreach (var two in theirs)
            {
                if (one.Kind != LegKind.Enters && two.Kind != LegKind.Enters && Of(one.Kind, two.Kind) == concern && FloorGeometry.Whole(one.Apart(two)) < (bothMove ? 2 * settle.BodyRadius.Value : Room(one.Kind, two.Kind)))
                {
                    return two;
                }
            }
        }

        return null;
    }

    public int Room(LegKind one, LegKind two) => Of(one, two) switch
    {
        FloorConcern.Underfoot => 2 * settle.BodyRadius.Value,
        FloorConcern.Lane when one == LegKind.Sent || two == LegKind.Sent => settle.LaneBesideFall.Value,
        _ => settle.LaneBeside.Value,
    };

    public static FloorConcern Of(LegKind one, LegKind two) =>
        one == LegKind.Lies || two == LegKind.Lies ? FloorConcern.Underfoot : one.IsSent() || two.IsSent() ? FloorConcern.Lane : FloorConcern.Spacing;
}

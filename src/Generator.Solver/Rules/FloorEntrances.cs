using Generator.Rules;
using Generator.Rules.Bodies;
using Generator.Rules.Replaying;
using Generator.Solver.Filling;
using Google.OrTools.Sat;

namespace Generator.Solver.Rules;

/// <summary>Finds in an answer who comes too near to whom on the way onto the floor, or has no way onto it.</summary>
internal sealed class FloorEntrances(ModelAnswer answer)
{
    private readonly MoveModel model = answer.Model;
    private readonly FloorWays ways = FloorWays.Of(answer);
    private readonly FloorClashes clashes = new(answer);

    /// <summary>One clause for each who meets somebody on the way onto the floor.</summary>
    public IEnumerable<IReadOnlyList<ILiteral>> Of(FloorConcern concern)
    {
        var since = model.Options.From is { Moves: > 0 } state ? state.Time : double.NegativeInfinity;
        foreach (var slot in model.Slots.Where(s => answer.Value(s.Used) == 1))
        {
            var until = (double)answer.Value(slot.End);
            for (var a = 0; a < model.Cast; a++)
            {
                var enters = ways.Openings[a].Chain().Where(l => l.Kind == LegKind.Enters).ToList();
                for (var b = 0; enters.Count > 0 && b < model.Cast; b++)
                {
                    if (b == a)
                    {
                        continue;
                    }

                    var theirs = ways.Deeds.LastOrDefault(d => d.Attacker == b && d.Slot.Index <= slot.Index);
                    var legs = (theirs?.After ?? ways.Openings[b]).Chain().Where(l => l.Kind != LegKind.Enters || b > a).ToList();
                    var move = theirs is null || theirs.Slot.Index < slot.Index ? int.MinValue : theirs.Motion.Move;
                    if (legs.Any(l => Meets(concern, enters, [l], l.Move == move ? double.NegativeInfinity : since, until)))
                    {
                        yield return Enters(concern, slot, a, theirs, b, enters, until);
                    }
                }
            }

            since = until;
        }
    }

    /// <summary>One clause for each who, coming in later than was known before the window, would have met somebody before it.</summary>
    public IEnumerable<IReadOnlyList<ILiteral>> Late()
    {
        if (model.Options.From is not { Moves: > 0 } state)
        {
            yield break;
        }

        var late = Enumerable.Range(0, model.Cast).Where(a => state.Attackers[a].HasNotActed && answer.Value(model.Delays[a]) > 0).ToList();
        AttackerState[] now = [.. state.Attackers.Select((s, a) => late.Contains(a) ? s.Entering(model.Scene, a, (int)answer.Value(model.Entrances[a])) : s)];
        foreach (var _ in late.Where(a => model.Scene.Entries.To(now[a].Bearing, now[a].Distance).Closed is not null
            || Entering.MeetsOnTheFloor(model.Scene, a, now[a].Way, model.Options.Past.Prepend(state))
            || now.Where((s, b) => b != a && s.HasNotActed && Entering.MeetsAtTheEdge(model.Scene, (a, b), now[a].Way, s, state.Time)).Any()))
        {
            var clause = new FloorClause(answer);
            foreach (var entrance in model.Entrances)
            {
                clause.Same(entrance);
            }

            yield return clause.Literals;
        }
    }

    /// <summary>One clause for each who cannot come to their place at all.</summary>
    public IEnumerable<IReadOnlyList<ILiteral>> NoWayOn()
    {
        for (var a = 0; a < model.Cast && model.Options.From is null; a++)
        {
            var stands = model.Start.Attackers[a];
            if (answer.Value(model.Entrances[a]) > 0 && model.Scene.Entries.To((int)answer.Value(stands.Bearing), (int)answer.Value(stands.Distance)).Closed is not null)
            {
                var clause = new FloorClause(answer);
                clause.Same(stands.Bearing);
                clause.Same(stands.Distance);
                clause.AtLeast(model.Entrances[a], 1);
                yield return clause.Literals;
            }
        }
    }

    /// <summary>
    /// That somebody comes in then to that place while another does, or stands by, what they do: as long as nothing else is done with the other until the row ends, it is all the same when
    /// the row ends, if only late enough.
    /// </summary>
    private List<ILiteral> Enters(FloorConcern concern, SlotVars slot, int a, FloorDeed? theirs, int b, IReadOnlyList<Leg> enters, double until)
    {
        var motion = theirs?.Motion;
        var legs = theirs is null ? ways.Openings[b].Chain().Where(l => l.Kind != LegKind.Enters || b > a).ToList() : [.. theirs.Motion.Legs()];
        if ((theirs is not null && !clashes.IsPlain(theirs)) || !Meets(concern, enters, legs, double.NegativeInfinity, until))
        {
            return clashes.Pinned(slot.Index);
        }

        var clause = new FloorClause(answer);
        clause.Same(model.Start.Attackers[a].Bearing);
        clause.Same(model.Start.Attackers[a].Distance);
        clause.Same(model.Entrances[a]);
        clause.True(slot.Used);
        clause.AtLeast(slot.End, (long)until);
        clause.StaysPut(b, theirs?.Slot.Index ?? -1, slot);
        if (theirs is null)
        {
            clause.Same(model.Start.Attackers[b].Bearing);
            clause.Same(model.Start.Attackers[b].Distance);
            clause.Same(model.Entrances[b]);
            return clause.Literals;
        }

        clause.Acts(theirs, true, true);
        var (soonest, latest) = (0, 0);
        while (soonest > -FloorClashes.Neighbours && Meets(concern, enters, [.. motion!.Value.Later(soonest - 1).Legs()], double.NegativeInfinity, until))
        {
            soonest--;
        }

        while (latest < FloorClashes.Neighbours && Meets(concern, enters, [.. motion!.Value.Later(latest + 1).Legs()], double.NegativeInfinity, until))
        {
            latest++;
        }

        clause.Between(theirs.Slot.Start, null, soonest, latest);
        return clause.Literals;
    }

    private bool Meets(FloorConcern concern, IReadOnlyList<Leg> enters, IReadOnlyList<Leg> legs, double since, double until) =>
        enters.Any(e => legs.Any(l => FloorClashes.Of(e.Kind, l.Kind) == concern && FloorGeometry.Whole(e.Apart(l, since, until)) < clashes.Room(e.Kind, l.Kind)));
}

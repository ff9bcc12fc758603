using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Bodies;
using Generator.Solver.Filling;
using Google.OrTools.Sat;

namespace Generator.Solver.Rules;

/// <summary>Finds in an answer who stands too near to whom at rest: at the opening, where an attack is thrown from, between moves, and beside the hero.</summary>
internal sealed class FloorRests(ModelAnswer answer)
{
    private readonly MoveModel model = answer.Model;
    private readonly Func<IntVar, long> value = answer.Value;
    private readonly Settle settle = answer.Model.Scene.Settle;

    /// <summary>Two who open too close.</summary>
    public IEnumerable<IReadOnlyList<ILiteral>> Opening()
    {
        for (var a = 0; a < model.Cast && model.Options.From is null; a++)
        {
            for (var b = a + 1; b < model.Cast; b++)
            {
                var (one, other) = (model.Start.Attackers[a], model.Start.Attackers[b]);
                if (Apart(one.Bearing, one.Distance, other.Bearing, other.Distance) < settle.Spacing.Value)
                {
                    yield return Places(one, other).Literals;
                }
            }
        }
    }

    /// <summary>One who stands ready too close to where an attack is thrown from.</summary>
    public IEnumerable<IReadOnlyList<ILiteral>> AtContact()
    {
        foreach (var slot in model.Slots.Where(s => value(s.HasAttack) == 1))
        {
            for (var a = 0; a < model.Cast; a++)
            {
                var other = slot.Before.Attackers[a];
                if (value(slot.Targets[a]) == 1 || !IsReady(other, a, value(slot.Start) + settle.ContactAfter.Value)
                    || Apart(slot.TargetBearing, slot.Distance, other.Bearing, other.Distance) >= settle.Spacing.Value)
                {
                    continue;
                }

                var clause = new FloorClause(answer);
                clause.True(slot.HasAttack);
                clause.Literals.Add(slot.Targets[a]);
                clause.Same(slot.TargetBearing);
                clause.Same(slot.Distance);
                clause.Same(other.Bearing);
                clause.Same(other.Distance);
                Ready(clause, slot, other, a, settle.ContactAfter.Value);
                yield return clause.Literals;
            }
        }
    }

    /// <summary>Two who stand ready too close to one another when a move on somebody else begins.</summary>
    public IEnumerable<IReadOnlyList<ILiteral>> BetweenMoves()
    {
        foreach (var slot in model.Slots.Where(s => value(s.Used) == 1))
        {
            for (var a = 0; a < model.Cast; a++)
            {
                for (var b = a + 1; b < model.Cast; b++)
                {
                    var (one, other) = (slot.Before.Attackers[a], slot.Before.Attackers[b]);
                    if (IsIn(slot, a) || IsIn(slot, b) || !IsReady(one, a, value(slot.Start)) || !IsReady(other, b, value(slot.Start))
                        || Apart(one.Bearing, one.Distance, other.Bearing, other.Distance) >= settle.Spacing.Value)
                    {
                        continue;
                    }

                    var clause = Places(one, other);
                    LeftAlone(clause, slot, a);
                    LeftAlone(clause, slot, b);
                    Ready(clause, slot, one, a, 0);
                    Ready(clause, slot, other, b, 0);
                    yield return clause.Literals;
                }
            }
        }
    }

    /// <summary>Somebody, upright or lying, at the hero's elbow or feet while the move is on another.</summary>
    public IEnumerable<IReadOnlyList<ILiteral>> AtTheHero(bool lying)
    {
        foreach (var slot in model.Slots.Where(s => value(s.Used) == 1))
        {
            for (var a = 0; a < model.Cast; a++)
            {
                var other = slot.Before.Attackers[a];
                var body = FloorWays.Of(answer).Before(a, slot.Index).LyingAt(value(slot.Start));
                if (IsIn(slot, a) || value(model.Entrances[a]) > value(slot.Start) || value(other.Gone) == 1 || value(other.Controlled) == 1 || value(other.Gripping) == 1 || (body is not null) != lying)
                {
                    continue;
                }

                var (steps, stands) = (StepsTo(slot), Place.At((int)value(other.Bearing), value(other.Distance)));
                if (IsNear(stands.ToLine(default, steps)))
                {
                    yield return AtTheHero(slot, a, other, steps);
                }
                else if (body is not null && IsNear(Place.Between(default, steps, body.Start, body.End)))
                {
                    // How somebody lies hangs on all that has been done with them.
                    yield return new FloorClashes(answer).Pinned(slot.Index);
                }
            }
        }
    }

    /// <summary>The feet, or the middle of who is upright or lies across, are too near to the hero on the step: it is all the same how they are there.</summary>
    private List<ILiteral> AtTheHero(SlotVars slot, int a, AttackerVars other, Place steps)
    {
        var clause = new FloorClause(answer);
        LeftAlone(clause, slot, a);
        clause.True(model.Cp.AtMost(model.Entrances[a], slot.Start, "entered"));
        clause.Literals.AddRange([other.Gone, other.Controlled, other.Gripping]);
        if (value(other.Distance) < 2 * settle.BodyRadius.Value)
        {
            clause.Within(other.Distance, 0, (2 * settle.BodyRadius.Value) - 1);
            return clause.Literals;
        }

        clause.Same(other.Bearing);
        clause.Same(other.Distance);
        clause.Chosen([.. slot.Uses, .. slot.Targets]);
        clause.Same(slot.TargetBearing);
        clause.Same(slot.Distance);
        if (steps != default)
        {
            clause.Same(slot.Follows);
        }

        return clause.Literals;
    }

    private Place StepsTo(SlotVars slot)
    {
        var use = Array.FindIndex(slot.Uses, u => value(u) == 1);
        return use < 0 || value(slot.NoTarget) == 1 || model.Vocabulary.Uses[use] is not { Technique: not null } chosen ? default
            : Place.At((int)value(slot.TargetBearing), model.Scene.TechniqueReach(chosen.Index, (int)value(slot.Target)).Step((int)value(slot.Distance), (int)value(slot.Follows)));
    }

    private bool IsNear(double apart) => FloorGeometry.Whole(apart) < 2 * settle.BodyRadius.Value;

    /// <summary>A bearing on the way round the clock on which the floor does not reach so far.</summary>
    public IEnumerable<IReadOnlyList<ILiteral>> WalkingRound()
    {
        foreach (var slot in model.Slots.Where(s => value(s.HasAttack) == 1 && value(s.WalkRound) != 0))
        {
            var stands = slot.Before.Attackers[(int)value(slot.Target)];
            var (from, to) = (new Bearing((int)value(stands.Bearing)), new Bearing((int)value(slot.TargetBearing)));
            var way = from.To(to).HalfHours;
            var distance = (int)value(stands.Distance);
            if (Enumerable.Range(1, Math.Abs(way)).All(i => distance <= model.Scene.Floor[from.HalfHours + (Math.Sign(way) * i)]))
            {
                continue;
            }

            var clause = new FloorClause(answer);
            clause.Chosen(slot.Targets);
            clause.True(slot.HasAttack);
            clause.Same(stands.Bearing);
            clause.Same(slot.TargetBearing);
            clause.Within(stands.Distance, distance, DistancePart.Farthest);
            yield return clause.Literals;
        }
    }

    private FloorClause Places(AttackerVars one, AttackerVars other)
    {
        var clause = new FloorClause(answer);
        foreach (var place in new[] { one.Bearing, one.Distance, other.Bearing, other.Distance })
        {
            clause.Same(place);
        }

        return clause;
    }

    private void Ready(FloorClause clause, SlotVars slot, AttackerVars other, int a, int after)
    {
        clause.True(model.Cp.AtMost(other.ReadyAt, slot.Start + after, "ready"));
        clause.True(model.Cp.AtMost(model.Entrances[a], slot.Start + after, "entered"));
        clause.True(other.Active);
    }

    private static void LeftAlone(FloorClause clause, SlotVars slot, int a)
    {
        clause.True(slot.Used);
        clause.Literals.Add(slot.Targets[a]);
        clause.Literals.Add(slot.Seconds[a]);
    }

    private bool IsIn(SlotVars slot, int a) => value(slot.Targets[a]) == 1 || value(slot.Seconds[a]) == 1;

    private bool IsReady(AttackerVars other, int a, long moment) => value(other.Active) == 1 && value(other.ReadyAt) <= moment && value(model.Entrances[a]) <= moment;

    private int Apart(IntVar bearing, IntVar distance, IntVar other, IntVar far) =>
        FloorGeometry.Apart(new Bearing((int)value(bearing)).Apart(new Bearing((int)value(other))), (int)value(distance), (int)value(far));
}

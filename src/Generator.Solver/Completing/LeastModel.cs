using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Rules;
using Generator.Solver.Engine;
using Generator.Solver.Filling;
using Google.OrTools.Sat;

namespace Generator.Solver.Completing;

/// <summary>What a sketch says, posted to a model of rows: all that gives costs less than a price.</summary>
/// <param name="model">The rows.</param>
/// <param name="steps">The moves of the sketch.</param>
/// <param name="price">All that gives costs less.</param>
/// <param name="shape">Which row fills which move; null where that is open.</param>
/// <param name="before">Half counts by which the model's time runs ahead of the routine's, as somebody sets off before count 1.</param>
internal sealed class LeastModel(MoveModel model, IReadOnlyList<SketchStep> steps, long price, LeastShape? shape, IntVar before)
{
    private readonly Cp cp = model.Cp;
    private readonly List<LinearExpr> costs = [];
    private readonly Dictionary<int, BoolVar> isLeftOut = [];

    /// <summary>What of each move gives in the row that fills it, what is left out and put in.</summary>
    public void Post()
    {
        var fills = shape is null ? Fills() : Fills(shape);
        for (var i = 0; i < steps.Count; i++)
        {
            foreach (var (part, holds) in Parts(i))
            {
                var gives = part is { } kind && kind.Price() < price ? cp.Bool($"gives[{i},{kind}]") : cp.False;
                for (var p = 0; p < model.Slots.Count; p++)
                {
                    if (!cp.IsFalse(fills[i][p]))
                    {
                        cp.Model.AddBoolOr([fills[i][p].Not(), gives, holds(model.Slots[p])]);
                    }
                }

                if (!cp.IsFalse(gives))
                {
                    costs.Add(LinearExpr.Term(gives, part!.Value.Price()));
                }
            }
        }

        Counts(fills);
        if (costs.Count > 0)
        {
            cp.Model.Add(LinearExpr.Sum(costs) <= price - 1);
        }
    }

    /// <summary>The attack may take hold in a row of its own, at no price.</summary>
    public static bool MayOpen(Scene scene, SketchStep step) => step.TakesHoldFirst && Enumerable.Range(0, scene.Cast).Any(a => step.Holds(a).Any());

    /// <summary>The move may be left out at such a price.</summary>
    public static bool MayGo(SketchStep step, long price) => step.MayGo && step.WhenLeftOut.Price() < price;

    /// <summary>
    /// Each count is kept, or is later or sooner by as much as all since the last that gave; before anything said has come all may be moved. Where an attack may take hold in a row that nobody knows nothing is asked.
    /// </summary>
    private void Counts(BoolVar[][] fills)
    {
        IntVar shift = cp.Const(0);
        for (var i = 0; i < steps.Count; i++)
        {
            if (steps[i].Move.Count is not { } count)
            {
                continue;
            }

            var next = cp.Int(-model.Options.Horizon, model.Options.Horizon, $"shift[{i}]");
            if (shape is null && MayOpen(model.Scene, steps[i]))
            {
                shift = next;
                continue;
            }

            var (gives, late) = (Gives(i), cp.Bool($"late[{i}]"));
            cp.Model.Add(next == shift).OnlyEnforceIf(gives.Not());
            cp.Model.Add(next == shift).OnlyEnforceIf(late.Not());
            for (var p = 0; p < model.Slots.Count; p++)
            {
                if (!cp.IsFalse(fills[i][p]))
                {
                    // Where the attack takes hold in the row before, that is when the move starts.
                    var start = model.Slots[shape?.IsAnswer(p) == true ? p - 1 : p].Start - before;
                    cp.Model.AddLinearConstraint(start, count.First.Value, count.Last.Value).OnlyEnforceIf([fills[i][p], late.Not()]);
                    cp.Model.AddLinearConstraint(start - next, count.First.Value, count.Last.Value).OnlyEnforceIf([fills[i][p], late]);
                }
            }

            shift = next;
        }
    }

    /// <summary>The count of a move gives; at no price where nothing before it has come.</summary>
    private BoolVar Gives(int index)
    {
        var first = Enumerable.Range(0, index).TakeWhile(isLeftOut.ContainsKey).Count() == index;
        if (index == 0 || (price <= SketchPart.Count.Price() && !first))
        {
            return index == 0 ? cp.True : cp.False;
        }

        var gives = cp.Bool($"gives[{index},Count]");
        if (!first)
        {
            costs.Add(LinearExpr.Term(gives, SketchPart.Count.Price()));
            return gives;
        }

        var costsSomething = cp.Bool($"pays[{index},Count]");
        for (var i = 0; i < index; i++)
        {
            cp.Model.AddBoolOr([gives.Not(), costsSomething, isLeftOut[i]]);
        }

        costs.Add(LinearExpr.Term(costsSomething, SketchPart.Count.Price()));
        return gives;
    }

    /// <summary>Which row fills which move is known; what is put in has its price.</summary>
    private BoolVar[][] Fills(LeastShape shape)
    {
        costs.Add(LinearExpr.Constant(shape.Rows.Count(r => r < 0) * SketchPart.Added.Price()));
        return [.. steps.Select((_, i) => shape.Rows.Select((r, p) => r == i && !shape.IsHold(p) ? model.Cp.True : model.Cp.False).ToArray())];
    }

    /// <summary>Which row fills which move, in their order; what is left out and put in has its price.</summary>
    private BoolVar[][] Fills()
    {
        var rows = model.Slots.Count;
        BoolVar[][] fills = [.. steps.Select((_, i) => cp.Bools(rows, $"fills[{i}]"))];
        for (var i = 0; i < steps.Count; i++)
        {
            if (MayGo(steps[i], price))
            {
                isLeftOut[i] = cp.Bool($"leftout[{i}]");
                costs.Add(LinearExpr.Term(isLeftOut[i], steps[i].WhenLeftOut.Price()));
            }

            cp.Model.AddExactlyOne([.. fills[i], isLeftOut.GetValueOrDefault(i, cp.False)]);
        }

        for (var p = 0; p < rows; p++)
        {
            cp.Model.AddAtMostOne([.. fills.Select(f => f[p])]);
            for (var i = 0; i < steps.Count; i++)
            {
                cp.Model.AddImplication(fills[i][p], model.Slots[p].Used);
                for (var j = i + 1; j < steps.Count; j++)
                {
                    for (var q = 0; q < p; q++)
                    {
                        cp.Model.AddBoolOr([fills[i][p].Not(), fills[j][q].Not()]);
                    }
                }
            }
        }

        var putIn = cp.Int(0, rows, "putin");
        cp.Model.Add(putIn >= Cp.Sum(model.Slots.Select(s => s.Used)) - Cp.Sum(fills.SelectMany(f => f)) - steps.Count(s => MayOpen(model.Scene, s)));
        costs.Add(LinearExpr.Term(putIn, SketchPart.Added.Price()));
        return fills;
    }

    /// <summary>What a move says, each with its kind (null where it must not give) and when a row keeps it. Of lead and rear, of places and of attacks that may take hold first nothing is asked: that only allows more.</summary>
    private IEnumerable<(SketchPart? Part, Func<SlotVars, ILiteral> Holds)> Parts(int index)
    {
        var move = steps[index].Move;
        if (move.Attacker is { } who)
        {
            yield return (SketchPart.Attacker, slot => slot.Targets[who]);
        }

        if (move.FollowsUp)
        {
            yield return (SketchPart.Attack, slot => slot.NoAttack);
        }
        else if (move.Attack is { } attack && !MayOpen(model.Scene, steps[index]))
        {
            var thrown = attack.Ids.ToHashSet(StringComparer.Ordinal);
            yield return (SketchPrices.Kind(attack, SketchPart.Attack), slot => model.AttackIs(slot, a => thrown.Contains(a.Id), $"attack[{index}]"));
        }

        if (move.Technique is { } technique)
        {
            var done = technique.Ids.ToHashSet(StringComparer.Ordinal);
            var either = done.Concat(technique.Ids.Select(id => steps[index].OtherSideOf(id)).OfType<string>()).ToHashSet(StringComparer.Ordinal);
            yield return (SketchPrices.Kind(technique, SketchPart.Technique), slot => model.UseIs(slot, u => u.Technique is { } t && either.Contains(t.Id), $"technique[{index}]"));
            yield return (SketchPrices.Kind(technique, SketchPart.Side), slot => model.UseIs(slot, u => u.Technique is { } t && (done.Contains(t.Id) || !either.Contains(t.Id)), $"side[{index}]"));
        }
        else if (move.IsSuffered)
        {
            yield return (SketchPart.Technique, slot => model.UseIs(slot, u => u.Technique is { Family: Family.Setback }, $"suffered[{index}]"));
        }

        if (move.Reaction is { } reaction)
        {
            var sold = reaction.Ids.ToHashSet(StringComparer.Ordinal);
            yield return (SketchPrices.Kind(reaction, SketchPart.Reaction), slot => model.ReactionIs(slot, r => sold.Contains(r.Id), $"reaction[{index}]"));
        }
    }
}

using Generator.Domain;
using Generator.Rules.Memories;
using Generator.Solver.Filling;
using Google.OrTools.Sat;

namespace Generator.Solver.Rules;

/// <summary>Every hero moment happens where the brief fixed it: by the end, or, in rows that do not end the routine, as long as there is still time.</summary>
public sealed class Moments : RuleModule
{
    public override string Id => "moments";

    public override void Post(MoveModel model)
    {
        var memory = model.Options.Memory?.MemoryOf(Id) as MomentsMemory;
        for (var m = 0; m < model.Scene.Brief.Moments.Count; m++)
        {
            var progress = memory?.Progress[m] ?? MomentProgress.Nothing;
            if (!progress.Done)
            {
                Require(model, m, model.Scene.Brief.Moments[m], progress);
            }
        }
    }

    private static void Require(MoveModel model, int number, Moment moment, MomentProgress progress)
    {
        var solver = model.Cp.Model;
        var ways = progress.Begun.Select(begun => Run(model, moment, begun, 0, $"moment[{number},begun{begun}]")).ToList();
        for (var i = 0; i < model.Slots.Count; i++)
        {
            ways.Add(Run(model, moment, 0, i, $"moment[{number},{i}]"));
        }

        var happened = ways.OfType<ILiteral>().ToList();
        if (model.Options.Ends)
        {
            solver.AddBoolOr(happened);
        }
        else if (moment.Latest is { } latest)
        {
            var timeLeft = model.Cp.AtMost(model.End.Time, LinearExpr.Constant(latest.Value), $"momenttime[{number}]");
            solver.AddBoolOr([timeLeft, .. happened]);
        }
    }

    /// <summary>True when the moves from <paramref name="first"/> on stand in the rows from <paramref name="row"/> on; null when they cannot.</summary>
    private static BoolVar? Run(MoveModel model, Moment moment, int first, int row, string name)
    {
        var rest = moment.Moves.Count - first;
        if (row + rest > model.Slots.Count && model.Options.Ends)
        {
            return null;
        }

        var all = model.Cp.Bool(name);
        for (var n = 0; n < rest && row + n < model.Slots.Count; n++)
        {
            Match(model, moment.Moves[first + n], model.Slots[row + n], all);
        }

        if (first == 0)
        {
            var start = model.Slots[row].Start;
            model.Cp.Model.Add(start >= (moment.Earliest?.Value ?? 0)).OnlyEnforceIf(all);
            model.Cp.Model.Add(start <= (moment.Latest?.Value ?? model.Options.Horizon)).OnlyEnforceIf(all);
        }

        return all;
    }

    private static void Match(MoveModel model, MomentMove wanted, SlotVars slot, BoolVar all)
    {
        var solver = model.Cp.Model;
        var brief = model.Scene.Brief;
        solver.Add(model.OverUses(slot, u => u.Technique is { } t && t.GoesBy(wanted.Technique) ? 1 : 0) == 1).OnlyEnforceIf(all);
        if (wanted.Attacker is { } name)
        {
            var a = brief.Attackers.Select(p => p.Name).ToList().IndexOf(name);
            solver.AddImplication(all, a < 0 ? model.Cp.False : slot.Targets[a]);
        }

        if (wanted.WantsNoAttack)
        {
            solver.Add(model.OverAttacks(slot, _ => 1) == 0).OnlyEnforceIf(all);
        }
        else if (wanted.Attack is { } attack)
        {
            solver.Add(model.OverAttacks(slot, k => model.Scene.Book.Attacks[k].GoesBy(attack) ? 1 : 0) == 1).OnlyEnforceIf(all);
        }

        if (wanted.Reaction is { } reaction)
        {
            solver.Add(model.OverReactions(slot, r => model.Scene.Book.Reactions[r].Id == reaction ? 1 : 0) == 1).OnlyEnforceIf(all);
        }
    }
}

using Generator.Domain;
using Generator.Rules.Memories;
using Generator.Solver.Filling;
using Generator.Solver.Staging;
using Google.OrTools.Sat;

namespace Generator.Solver.Rules;

/// <summary>
/// The attackers who must be out are out, by a finish; the one who must go out last does. In rows that do not end the routine nobody of them
/// goes out otherwise, and the last one stays in.
/// </summary>
public sealed class Ending : RuleModule, IPlanRule
{
    public override string Id => "ending";

    public override void Post(MoveModel model)
    {
        if (model.Scene.Brief.Ending is not { } ending)
        {
            return;
        }

        var solver = model.Cp.Model;
        var names = model.Scene.Brief.Attackers.Select(a => a.Name).ToList();
        var finished = model.Options.Memory?.MemoryOf(Id) is EndingMemory memory ? memory : EndingMemory.Nobody;
        foreach (var a in ending.Out.Select(name => names.IndexOf(name)))
        {
            if (a < 0 || (model.Options.From?.Attackers[a].Posture == Posture.Out && !finished.Contains(a)))
            {
                solver.AddBoolOr([]);
                continue;
            }

            if (model.Options.Ends)
            {
                solver.AddBoolOr([model.End.Attackers[a].Out]);
            }

            foreach (var slot in model.Slots)
            {
                var finish = model.UseIs(slot, u => u.Technique is { Family: Family.Finish }, $"finish[{slot.Index},{a}]");
                solver.AddBoolOr([slot.Targets[a].Not(), slot.TargetAfter.Out.Not(), finish]);
                solver.AddBoolOr([slot.SecondsOut[a].Not(), finish]);
            }
        }

        if (ending.Last is { } last)
        {
            Last(model, names.IndexOf(last));
        }
    }

    public void Post(StagingModel plan)
    {
        if (plan.Scene.Brief.Ending is not { } ending)
        {
            return;
        }

        var names = plan.Scene.Brief.Attackers.Select(a => a.Name).ToList();
        if (!plan.Ends)
        {
            if (ending.Last is { } name && names.IndexOf(name) is >= 0 and var last)
            {
                foreach (var exchange in plan.Exchanges)
                {
                    plan.Cp.Model.AddBoolOr([exchange.By[last].Not(), exchange.PutsOut.Not()]);
                }
            }

            return;
        }

        foreach (var a in ending.Out.Append(ending.Last).OfType<string>().Select(name => names.IndexOf(name)))
        {
            plan.Cp.Model.AddBoolOr([a < 0 ? plan.Cp.False : plan.EndOut[a]]);
        }
    }

    private static void Last(MoveModel model, int last)
    {
        var solver = model.Cp.Model;
        if (last < 0)
        {
            solver.AddBoolOr([]);
            return;
        }

        if (!model.Options.Ends)
        {
            // There is more to come, and others who may still go out.
            solver.AddBoolOr([model.End.Attackers[last].Out.Not()]);
            return;
        }

        solver.AddBoolOr([model.End.Attackers[last].Out]);
        var time = OutTimes.Of(model, last);
        for (var a = 0; a < model.Cast; a++)
        {
            if (a != last)
            {
                solver.Add(OutTimes.Of(model, a) + 1 <= time).OnlyEnforceIf(model.End.Attackers[a].Out);
            }
        }
    }
}

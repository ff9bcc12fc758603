using Generator.Domain;
using Generator.Rules.Memories;
using Generator.Solver.Filling;
using Google.OrTools.Sat;

namespace Generator.Solver.Rules;

/// <summary>As many setbacks and pauses of the story as the brief asks for, never more on the way; in an act that asks for one that hurts, such a one.</summary>
public sealed class Setbacks : RuleModule
{
    public override string Id => "setbacks";

    public override void Post(MoveModel model)
    {
        var memory = model.Options.Memory?.MemoryOf(Id) as SetbacksMemory ?? SetbacksMemory.None;
        Count(model, model.Scene.Brief.Setbacks, memory.Setbacks, u => u.Technique is { Family: Family.Setback });
        Count(model, model.Scene.Brief.Pauses, memory.Pauses, u => u.Technique is { IsStoryPause: true });
        if (model.Options.Ends && !model.Options.LeavesHurtsOut && model.Scene.Plan is { } plan)
        {
            for (var act = 0; act < plan.Acts.Count; act++)
            {
                if (plan.Acts[act].Hurts is { } asked && !memory.HasHurt(act))
                {
                    Hurt(model, act, asked);
                }
            }
        }
    }

    /// <summary>Some row is the setback for which the act asks.</summary>
    private static void Hurt(MoveModel model, int act, Hurt asked)
    {
        var cp = model.Cp;
        var hurts = model.Slots.SelectMany(s => model.Hurts[s.Index].Where(h => h.OfHero && h.What.IsAs(asked) && (h.Act < 0 || h.Act == act))
            .Select(h => h.Act == act ? h.When : cp.And($"hurtasasked[{s.Index},{act}]", h.When, HurtPart.IsSetback(model, s, act, asked.Until.Value))));
        cp.Model.AddBoolOr(hurts.Where(h => !cp.IsFalse(h)));
    }

    private static void Count(MoveModel model, int? asked, int before, Func<Use, bool> counts)
    {
        if (asked is not { } number)
        {
            return;
        }

        var sum = LinearExpr.Sum([.. model.Slots.Select(s => model.OverUses(s, u => counts(u) ? 1 : 0)), LinearExpr.Constant(before)]);
        model.Cp.Model.Add(sum <= number);
        if (model.Options.Ends)
        {
            model.Cp.Model.Add(sum >= number);
        }
    }
}

using Generator.Domain;
using Generator.Rules.Memories;
using Generator.Solver.Filling;
using Google.OrTools.Sat;

namespace Generator.Solver.Rules;

/// <summary>As many setbacks and pauses of the story as the brief asks for; never more on the way.</summary>
public sealed class Setbacks : RuleModule
{
    public override string Id => "setbacks";

    public override void Post(MoveModel model)
    {
        var memory = model.Options.Memory?.MemoryOf(Id) as SetbacksMemory ?? SetbacksMemory.None;
        Count(model, model.Scene.Brief.Setbacks, memory.Setbacks, u => u.Technique is { Family: Family.Setback });
        Count(model, model.Scene.Brief.Pauses, memory.Pauses, u => u.Technique is { IsStoryPause: true });
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

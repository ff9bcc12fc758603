using Generator.Domain;
using Generator.Rules.Memories;
using Google.OrTools.Sat;

namespace Generator.Solver.Filling;

/// <summary>
/// What each row hurts: what rows that are known say or, where none are, what the acts of the brief ask for. There the first setback of the act hurts that is over before the count.
/// </summary>
internal static class HurtPart
{
    /// <summary>One list for each row; most are empty.</summary>
    public static IReadOnlyList<IReadOnlyList<HurtVars>> Of(MoveModel model)
    {
        List<HurtVars>[] hurts = [.. model.Slots.Select(_ => new List<HurtVars>())];
        if (model.Options.LeavesHurtsOut)
        {
            return hurts;
        }

        if (model.Options.Hurts is { } said)
        {
            foreach (var slot in model.Slots.Where(s => s.Index < said.Count && said[s.Index] is not null))
            {
                var hurt = said[slot.Index]!;
                var when = model.UseIs(slot, u => (hurt.OfHero || u.HasTarget) && u.Technique is { } t && (t.Family == Family.Setback) == hurt.OfHero, $"hurts[{slot.Index}]");
                hurts[slot.Index].Add(new HurtVars(when, hurt.OfHero, hurt.What, -1));
            }

            return hurts;
        }

        var acts = model.Scene.Plan?.Acts ?? [];
        var memory = model.Options.Memory?.MemoryOf("setbacks") as SetbacksMemory ?? SetbacksMemory.None;
        for (var act = 0; act < acts.Count; act++)
        {
            if (acts[act].Hurts is { } asked && !memory.HasHurt(act))
            {
                AddFirst(model, act, asked, hurts);
            }
        }

        return hurts;
    }

    /// <summary>True where a row is a setback of an act that is over before a count.</summary>
    public static BoolVar IsSetback(MoveModel model, SlotVars slot, int act, int before)
    {
        var (cp, plan) = (model.Cp, model.Scene.Plan!);
        var name = $"hurtact[{slot.Index},{act}]";
        var setback = model.UseIs(slot, u => u.Technique is { Family: Family.Setback }, name + ".setback");
        return cp.IsFalse(setback) ? cp.False : cp.And(
            name,
            setback,
            cp.Is(Parts.Of(model, slot, plan.Acts.Count - 1, plan.ActOf, name), act, name + ".there"),
            cp.UpTo(slot.End, before - 1));
    }

    private static void AddFirst(MoveModel model, int act, Hurt asked, List<HurtVars>[] hurts)
    {
        var cp = model.Cp;
        var earlier = new List<ILiteral>();
        foreach (var slot in model.Slots)
        {
            var fits = IsSetback(model, slot, act, asked.Until.Value);
            if (cp.IsFalse(fits))
            {
                continue;
            }

            var first = earlier.Count == 0 ? fits : cp.And($"hurts[{slot.Index},{act}]", [fits, .. earlier.Select(e => e.Not())]);
            hurts[slot.Index].Add(new HurtVars(first, true, asked, act));
            earlier.Add(fits);
        }
    }
}

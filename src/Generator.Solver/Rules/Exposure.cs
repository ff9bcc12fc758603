using Generator.Domain;
using Generator.Rules.Memories;
using Generator.Solver.Filling;
using Google.OrTools.Sat;

namespace Generator.Solver.Rules;

/// <summary>Falls and head-height hits of each performer in a run stay under the caps. The ten seconds of effort are a note and bind nobody.</summary>
public sealed class Exposure : RuleModule
{
    public override string Id => "exposure";

    public override void Post(MoveModel model)
    {
        var brief = model.Scene.Brief;
        var memory = model.Options.Memory?.MemoryOf(Id) as ExposureMemory ?? new ExposureMemory(0, 0, new int[model.Cast], null, false);
        var headHits = brief.Safety.HeadHitsPerDay / brief.Safety.Runs;
        for (var a = 0; a < model.Cast; a++)
        {
            var falls = model.Options.From?.Attackers[a].Falls ?? 0;
            Cap(model, a, falls, FallCap(brief, brief.Attackers[a]), s => model.ReactionIs(s, r => r.Fall != FallClass.None, $"falls[{s.Index}]"), "falls");
            Cap(model, a, memory.HeadHits[a], headHits, s => HeadHit(model, s), "headhits");
        }

        var heroFalls = model.Slots.Select(s => model.OverUses(s, u => u.Technique is { } t && t.HeroFall != FallClass.None ? 1 : 0));
        Limit(model, heroFalls, FallCap(brief, brief.Hero) - memory.HeroFalls);
        var heroHits = model.Slots.Select(s => (LinearExpr)model.Cp.And($"herohit[{s.Index}]",
            model.UseIs(s, u => u.Technique is { Family: Family.Setback }, $"setbackhit[{s.Index}]"),
            model.AttackIs(s, k => k.Line.IsAtHead, $"highattack[{s.Index}]")));
        Limit(model, heroHits, headHits - memory.HeroHeadHits);
    }

    private static int FallCap(Brief brief, Performer performer) => performer.FallsPerRun ?? brief.Safety.FallsPerDay / brief.Safety.Runs;

    /// <summary>A blow, kick or finish that the audience reads at head height, or a stop-hit there.</summary>
    private static bool IsHeadHit(Technique technique) =>
        technique is { Family: Family.Strike or Family.Kick or Family.Finish, Height: Height.High, Knap: not Knap.Breath }
            or { Family: Family.Defence, Height: Height.High, Knap: Knap.Victim, Band.MeetsOnTheWay: true };

    private static BoolVar HeadHit(MoveModel model, SlotVars slot)
    {
        var thrown = model.UseIs(slot, u => u.Technique is { } t && IsHeadHit(t), $"headhits[{slot.Index}]");
        return model.Unanswered(slot, thrown, $"headhits[{slot.Index}].hit");
    }

    private static void Cap(MoveModel model, int attacker, int before, int cap, Func<SlotVars, BoolVar> counts, string name)
    {
        if (before + model.Slots.Count <= cap)
        {
            return;
        }

        var each = model.Slots.SelectMany(s => Each(model, s, attacker, counts(s), name)).Select(c => (LinearExpr)c).ToList();
        Limit(model, each, cap - before);
    }

    /// <summary>Literals that each count one for the attacker: as the target and as one taken along.</summary>
    private static IEnumerable<BoolVar> Each(MoveModel model, SlotVars slot, int attacker, BoolVar happens, string name)
    {
        var cp = model.Cp;
        yield return cp.And($"{name}[{slot.Index},{attacker}]", slot.Targets[attacker], happens);
        if (!ReferenceEquals(slot.TakesTwo, cp.False))
        {
            yield return cp.And($"{name}[{slot.Index},{attacker}].second", slot.Seconds[attacker], slot.TakesTwo, happens);
        }
    }

    /// <summary>What was over the cap before these rows stays so; none may be added to it.</summary>
    private static void Limit(MoveModel model, IEnumerable<LinearExpr> each, int room) =>
        model.Cp.Model.Add(LinearExpr.Sum([.. each, LinearExpr.Constant(0)]) <= Math.Max(0, room));
}

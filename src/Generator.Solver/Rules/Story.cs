using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Memories;
using Generator.Solver.Filling;
using Google.OrTools.Sat;

namespace Generator.Solver.Rules;

/// <summary>
/// Charges for setbacks too many in an act and, at the end, too few (2 each), for half counts that a setback lacks of four, from the third on of six, before the hero scores again, and for scoring again with the same family (1).
/// </summary>
public sealed class Story : RuleModule
{
    private const int OutOfPlace = 2;
    private const int Felt = 4;
    private const int FeltWhenWorn = 6;
    private const int WornFrom = 3;

    public override string Id => "story";

    public override void Post(MoveModel model)
    {
        if (!model.Scene.Judges(FightRule.Story) || model.Scene.Plan is not { } plan)
        {
            return;
        }

        var was = model.Options.Memory?.MemoryOf(Id) as StoryMemory ?? new StoryMemory(new int[plan.Acts.Count], [], null);
        var setbacks = model.Slots.Select(s => model.UseIs(s, u => u.Technique is { Family: Family.Setback }, $"setback[{s.Index}]")).ToList();
        Places(model, plan, was, setbacks);
        Costs(model, was, setbacks);
    }

    private static bool Scores(Use use) => use.HasTarget && use.Technique is { } t && (t.IsHit || t.Family is Family.Throw or Family.Lock or Family.Finish);

    private void Places(MoveModel model, ActPlan plan, StoryMemory was, List<BoolVar> setbacks)
    {
        var cp = model.Cp;
        var acts = model.Slots.Select(s => Parts.Of(model, s, plan.Acts.Count - 1, plan.ActOf, "act")).ToList();
        for (var a = 0; a < plan.Acts.Count; a++)
        {
            var there = setbacks.Select((s, i) => (LinearExpr)cp.And($"setbackin[{i},{a}]", s, cp.Is(acts[i], a, $"inact[{i},{a}]"))).Append(LinearExpr.Constant(was.Setbacks[a]));
            var count = LinearExpr.Sum(there);
            var (act, rows) = (plan.Acts[a], setbacks.Count);
            if (act.MostSetbacks != int.MaxValue)
            {
                model.Charge(Id, cp.Positive(count - Math.Max(act.MostSetbacks, was.Setbacks[a]), rows, $"setbacksover[{a}]") * OutOfPlace);
            }

            if (model.Options.Ends && act.FewestSetbacks > 0)
            {
                model.Charge(Id, cp.Positive(act.FewestSetbacks - count, act.FewestSetbacks, $"setbackslacking[{a}]") * OutOfPlace);
            }
        }
    }

    private void Costs(MoveModel model, StoryMemory was, List<BoolVar> setbacks)
    {
        var (cp, slots) = (model.Cp, model.Slots);
        var families = slots.Select(s => cp.Pick(s.Uses, u => Scores(model.Vocabulary.Uses[u]) ? 1 + (int)model.Vocabulary.Uses[u].Technique!.Family : 0, $"scores[{s.Index}]")).ToList();
        var scores = slots.Select(s => Scored(model, s)).ToList();
        var last = Enum.GetValues<Family>().Length;

        // From behind: when and with what the hero scores next, 0 for not within these rows.
        var next = new (IntVar Start, IntVar Family)[slots.Count + 1];
        next[^1] = (model.End.Time, cp.Const(0));
        for (var i = slots.Count - 1; i >= 0; i--)
        {
            next[i] = (cp.Int(0, model.Options.Horizon * 2, $"nextscore[{i}]"), cp.Int(0, last, $"nextfamily[{i}]"));
            Either(model, scores[i], next[i].Start, slots[i].Start, next[i + 1].Start);
            Either(model, scores[i], next[i].Family, families[i], next[i + 1].Family);
        }

        for (var n = 0; n < was.Owed.Count; n++)
        {
            Owed(model, cp.True, LinearExpr.Constant(was.Owed[n].Time), LinearExpr.Constant(was.Owed[n].Felt), cp.Const(Code(was.Owed[n].Before)), next[0], $"owed[{n}]");
        }

        var before = cp.Const(Code(was.Scored));
        var so = was.Setbacks.Sum();
        for (var i = 0; i < slots.Count; i++)
        {
            var time = slots[i].Start + LinearExpr.Term(slots[i].HasAttack, model.Scene.Settle.ContactAfter.Value);
            var worn = so + i + 1 < WornFrom ? cp.False : cp.AtMost(LinearExpr.Constant(WornFrom - so), Engine.Cp.Sum(setbacks.Take(i + 1)), $"heroworn[{i}]");
            Owed(model, setbacks[i], time, LinearExpr.Affine(worn, FeltWhenWorn - Felt, Felt), before, next[i + 1], $"setbackowes[{i}]");
            var after = cp.Int(0, last, $"scored[{i}]");
            Either(model, scores[i], after, families[i], before);
            before = after;
        }
    }

    /// <summary>The hero scores with the move: a blow that is answered does not.</summary>
    private static BoolVar Scored(MoveModel model, SlotVars slot)
    {
        var with = model.UseIs(slot, Scores, $"scoring[{slot.Index}]");
        return model.Unanswered(slot, with, $"scored[{slot.Index}]");
    }

    private static int Code(Family? family) => family is { } some ? 1 + (int)some : 0;

    private static void Either(MoveModel model, BoolVar which, IntVar what, IntVar then, IntVar otherwise)
    {
        model.Cp.Model.Add(what == then).OnlyEnforceIf(which);
        model.Cp.Model.Add(what == otherwise).OnlyEnforceIf(which.Not());
    }

    private void Owed(MoveModel model, BoolVar setback, LinearExpr time, LinearExpr felt, IntVar before, (IntVar Start, IntVar Family) next, string name)
    {
        var cp = model.Cp;
        if (cp.IsFalse(setback))
        {
            return;
        }

        // What is still open where these rows do not end the routine is judged by later ones.
        var none = cp.Is(next.Family, 0, name + ".none");
        var judged = model.Options.Ends ? setback : cp.And(name + ".judged", setback, none.Not());
        var (wait, lacking) = (cp.Int(0, 4L * model.Far, name + ".wait"), cp.Int(0, FeltWhenWorn, name + ".lacking"));
        cp.Model.AddMaxEquality(wait, [LinearExpr.Constant(0), felt - (next.Start - time)]);
        var atMost = cp.Int(0, FeltWhenWorn, name + ".atmost");
        cp.Model.AddMinEquality(atMost, [felt, wait]);
        cp.Model.Add(lacking == atMost).OnlyEnforceIf(judged);
        cp.Model.Add(lacking == 0).OnlyEnforceIf(judged.Not());
        model.Charge(Id, lacking);

        var change = cp.Int(-Enum.GetValues<Family>().Length, Enum.GetValues<Family>().Length, name + ".change");
        cp.Model.Add(change == (LinearExpr)next.Family - before);
        var asBefore = cp.Or(name + ".asbefore", none, cp.Is(change, 0, name + ".same"));
        model.Charge(Id, cp.And(name + ".unchanged", judged, asBefore));
    }
}

using Generator.Domain;
using Generator.Rules.Replaying;
using Generator.Solver.Filling;
using Google.OrTools.Sat;

namespace Generator.Solver.Rules;

/// <summary>Skill, limits, wardrobe and floor allow what everybody is asked to do.</summary>
public sealed class Able : RuleModule
{
    public override string Id => "able";

    public override void Post(MoveModel model)
    {
        var able = model.Scene.Able;
        var stances = Stances(model);
        if (model.Options.From is null && able.WhyNotStance(model.Scene.Brief.Hero.OpeningStance, model.Scene.Brief.Hero.OpeningStance) is not null)
        {
            model.Cp.Model.AddBoolOr([]);
        }

        foreach (var slot in model.Slots)
        {
            model.Cp.Model.Add(model.OverUses(slot, u => u.Index >= 0 && able.WhyNotTechnique(u.Index) is not null ? 1 : 0) == 0);
            if (stances.Exists(s => !s.Allowed))
            {
                model.Cp.Table([slot.StanceClass, slot.Before.Stance], stances.Where(s => s.Allowed).Select(s => s.Row));
            }

            for (var a = 0; a < model.Cast; a++)
            {
                var attacker = a;
                var reacts = model.OverReactions(slot, r => able.WhyNotReaction(r, attacker) is not null ? 1 : 0);
                var asked = model.OverUses(slot, u => u.HasTarget && able.WhyNotOn(u.Index, attacker) is not null ? 1 : 0)
                    + model.OverAttacks(slot, k => able.WhyNotAttack(k, attacker) is not null ? 1 : 0)
                    + reacts;
                model.Cp.Model.Add(asked == 0).OnlyEnforceIf(slot.Targets[a]);
                if (slot.HasSeconds(model.Cp))
                {
                    model.Cp.Model.Add(reacts == 0).OnlyEnforceIf(slot.Seconds[a]);
                    var taken = model.OverUses(slot, u => u.Technique is { TakesTwo: true } && able.WhyNotOn(u.Index, attacker) is not null ? 1 : 0);
                    model.Cp.Model.Add(taken == 0).OnlyEnforceIf(slot.Seconds[a]);
                }

                Meanwhile(model, slot, a);
            }
        }
    }

    /// <summary>An attacker whom the row does not concern goes on holding the hero, or being held, only if both can bear that, and what the technique asks of its base.</summary>
    private static void Meanwhile(MoveModel model, SlotVars slot, int a)
    {
        var (cp, able, was) = (model.Cp, model.Scene.Able.Meanwhile, slot.Before.Attackers[a]);
        ILiteral[] elsewhere = [slot.Used, slot.Targets[a].Not(), slot.Seconds[a].Not()];
        Never(slot.Before.Left, able.WhyNotHolding(Side.Left) is null ? [] : [HandPart.Code(new Hand(HandKind.Holding, a), model.Cast)], elsewhere);
        Never(slot.Before.Right, able.WhyNotHolding(Side.Right) is null ? [] : [HandPart.Code(new Hand(HandKind.Holding, a), model.Cast)], elsewhere);
        Never(was.Posture, Enum.GetValues<Posture>().Where(p => p.IsControlled() && able.WhyNotHeld(p, a) is not null).Select(p => (int)p), elsewhere);
        var lines = Enumerable.Range(0, AttackLine.Count).Where(i => AttackLine.FromIndex(i) is var line && (able.WhyNotGripping(line, a) ?? able.WhyNotGripped(line)) is not null);
        Never(was.Grip, ReferenceEquals(was.Gripping, cp.False) ? [] : lines, [.. elsewhere, was.Gripping]);
        if (model.Vocabulary.Uses.Any(Overburdens))
        {
            var burdens = model.OverUses(slot, u => Overburdens(u) ? 1 : 0);
            cp.Model.Add(burdens == 0).OnlyEnforceIf([.. elsewhere, was.Gripping]);
            cp.Model.Add(burdens == 0).OnlyEnforceIf([.. elsewhere, was.Controlled]);
        }

        bool Overburdens(Use use) => use.Index >= 0 && able.WhyNotBase(use.Index, a) is not null;

        void Never(IntVar what, IEnumerable<int> values, ILiteral[] when)
        {
            foreach (var value in values)
            {
                cp.Model.Add(what != value).OnlyEnforceIf(when);
            }
        }
    }

    /// <summary>Each kind of use from each stance, and whether the hero may take the stance in which it starts then.</summary>
    private static List<(long[] Row, bool Allowed)> Stances(MoveModel model) =>
    [
        .. model.Classes.StanceExamples.SelectMany((use, kind) => Enum.GetValues<Stance>().Select(s => ((long[])[kind, (int)s], MayStart(model, use, s)))),
    ];

    private static bool MayStart(MoveModel model, Use use, Stance before)
    {
        if (use.Technique is not { } technique)
        {
            return true;
        }

        var (from, to, _) = StanceChoice.For(model.Scene, before, technique, use.Kind == UseKind.EscapesGrab ? use.Grip : null);
        return model.Scene.Able.WhyNotStance(from, to) is null;
    }
}

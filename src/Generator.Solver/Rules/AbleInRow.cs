using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Solver.Filling;
using Google.OrTools.Sat;

namespace Generator.Solver.Rules;

/// <summary>What one row may ask of everybody, always or while somebody plays a hurt part of the body.</summary>
/// <param name="model">The rows.</param>
/// <param name="slot">The row.</param>
/// <param name="able">What is allowed.</param>
/// <param name="already">What has been posted already and need not be again; null for nothing.</param>
/// <param name="when">All are true where it holds; none where it always does.</param>
internal sealed class AbleInRow(MoveModel model, SlotVars slot, Ability able, Ability? already, ILiteral[] when)
{
    public void Post()
    {
        var solver = model.Cp.Model;
        solver.Add(model.OverUses(slot, u => u.Index >= 0 && Against(a => a.WhyNotTechnique(u.Index)) ? 1 : 0) == 0).OnlyEnforceIf(when);
        PostStances();
        for (var a = 0; a < model.Cast; a++)
        {
            var attacker = a;
            var reacts = model.OverReactions(slot, r => Against(x => x.WhyNotReaction(r, attacker)) ? 1 : 0);
            var asked = model.OverUses(slot, u => u.HasTarget && Against(x => x.WhyNotOn(u.Index, attacker)) ? 1 : 0)
                + model.OverAttacks(slot, k => Against(x => x.WhyNotAttack(k, attacker)) ? 1 : 0)
                + reacts;
            solver.Add(asked == 0).OnlyEnforceIf([.. when, slot.Targets[a]]);
            if (slot.HasSeconds(model.Cp))
            {
                solver.Add(reacts == 0).OnlyEnforceIf([.. when, slot.Seconds[a]]);
                var taken = model.OverUses(slot, u => u.Technique is { TakesTwo: true } && Against(x => x.WhyNotOn(u.Index, attacker)) ? 1 : 0);
                solver.Add(taken == 0).OnlyEnforceIf([.. when, slot.Seconds[a]]);
            }

            PostMeanwhile(a);
        }
    }

    /// <summary>There is a reason against it, and none for which it has been ruled out already.</summary>
    private bool Against(Func<Ability, string?> reason) => reason(able) is not null && (already is null || reason(already) is null);

    /// <summary>An attacker whom the row does not concern goes on holding the hero, or being held, only if both can bear that, and what the technique asks of its base.</summary>
    private void PostMeanwhile(int a)
    {
        var (cp, was) = (model.Cp, slot.Before.Attackers[a]);
        ILiteral[] elsewhere = [.. when, slot.Used, slot.Targets[a].Not(), slot.Seconds[a].Not()];
        Never(slot.Before.Left, Against(x => x.Meanwhile.WhyNotHolding(Side.Left)) ? [HandPart.Code(new Hand(HandKind.Holding, a), model.Cast)] : [], elsewhere);
        Never(slot.Before.Right, Against(x => x.Meanwhile.WhyNotHolding(Side.Right)) ? [HandPart.Code(new Hand(HandKind.Holding, a), model.Cast)] : [], elsewhere);
        Never(was.Posture, Enum.GetValues<Posture>().Where(p => p.IsControlled() && Against(x => x.Meanwhile.WhyNotHeld(p, a))).Select(p => (int)p), elsewhere);
        var lines = Enumerable.Range(0, AttackLine.Count).Where(i => AttackLine.FromIndex(i) is var line && Against(x => x.Meanwhile.WhyNotGripping(line, a) ?? x.Meanwhile.WhyNotGripped(line)));
        Never(was.Grip, ReferenceEquals(was.Gripping, cp.False) ? [] : lines, [.. elsewhere, was.Gripping]);
        if (model.Vocabulary.Uses.Any(Overburdens))
        {
            var burdens = model.OverUses(slot, u => Overburdens(u) ? 1 : 0);
            cp.Model.Add(burdens == 0).OnlyEnforceIf([.. elsewhere, was.Gripping]);
            cp.Model.Add(burdens == 0).OnlyEnforceIf([.. elsewhere, was.Controlled]);
        }

        bool Overburdens(Use use) => use.Index >= 0 && Against(x => x.Meanwhile.WhyNotBase(use.Index, a));

        void Never(IntVar what, IEnumerable<int> values, ILiteral[] there)
        {
            foreach (var value in values)
            {
                cp.Model.Add(what != value).OnlyEnforceIf(there);
            }
        }
    }

    /// <summary>The hero takes the stance in which each kind of use starts from each stance only if they may.</summary>
    private void PostStances()
    {
        var all = model.Classes.StanceExamples.SelectMany((use, kind) => Enum.GetValues<Stance>().Select(s => (Row: (long[])[kind, (int)s], Allowed: !Against(x => WhyNotStart(x, use, s))))).ToList();
        if (all.TrueForAll(s => s.Allowed))
        {
            return;
        }

        if (when.Length == 0)
        {
            model.Cp.Table([slot.StanceClass, slot.Before.Stance], all.Where(s => s.Allowed).Select(s => s.Row));
            return;
        }

        foreach (var (row, _) in all.Where(s => !s.Allowed))
        {
            var (kind, stance) = (model.Cp.Is(slot.StanceClass, row[0], "hurtkind"), model.Cp.Is(slot.Before.Stance, row[1], "hurtstance"));
            model.Cp.Model.AddBoolOr([kind.Not(), stance.Not(), .. when.Select(l => l.Not())]);
        }
    }

    private string? WhyNotStart(Ability by, Use use, Stance before)
    {
        if (use.Technique is not { } technique)
        {
            return null;
        }

        var (from, to, _) = StanceChoice.For(model.Scene, before, technique, use.Kind == UseKind.EscapesGrab ? use.Grip : null);
        return by.WhyNotStance(from, to);
    }
}

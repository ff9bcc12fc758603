using Generator.Domain;
using Generator.Rules.Replaying;
using Generator.Solver.Filling;

namespace Generator.Solver.Rules;

/// <summary>Skill, limits, wardrobe and surface allow what everybody is asked to do.</summary>
public sealed class Able : RuleModule
{
    public override string Id => "able";

    public override void Post(MoveModel model)
    {
        var able = model.Scene.Able;
        var stances = Stances(model);
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

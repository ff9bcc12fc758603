using Generator.Domain;
using Google.OrTools.Sat;

namespace Generator.Solver.Filling;

/// <summary>The choices of a row, and that they fit together as words do: an attack that the use may carry, a reaction that the technique lists.</summary>
internal static class ChoicePart
{
    public static SlotVars Build(MoveModel model, int index, BoundaryVars before, SlotVars? previous)
    {
        var cp = model.Cp;
        var vocabulary = model.Vocabulary;
        var mayIdle = index >= model.Options.FewestRows;
        var target = model.Options.Targets?[index] ?? -2;
        var words = model.Options.Words?[index];
        var uses = vocabulary.Uses.Select((u, n) => May(u, mayIdle, target) && words?.Uses[n] != false ? cp.Bool($"use[{index},{n}]") : cp.False).ToArray();
        var attacks = vocabulary.Attacks.Select((_, n) => words?.Attacks[n] == false ? cp.False : cp.Bool($"attack[{index}][{n}]")).ToArray();
        var reactions = vocabulary.Reactions.Select((_, n) => words?.Reactions[n] == false ? cp.False : cp.Bool($"reaction[{index}][{n}]")).ToArray();
        var targets = Enumerable.Range(0, model.Cast).Select(a => target is -2 || target == a ? cp.Bool($"on[{index},{a}]") : cp.False).ToArray();
        var slot = new SlotVars
        {
            Index = index,
            Before = before,
            Uses = uses,
            Attacks = attacks,
            NoAttack = cp.Bool($"noattack[{index}]"),
            Reactions = reactions,
            NoReaction = cp.Bool($"noreaction[{index}]"),
            Targets = targets,
            NoTarget = cp.Bool($"notarget[{index}]"),
            Target = cp.Int(0, model.Cast, $"target[{index}]"),
            FixedTarget = target,
            Start = cp.Int(0, model.Options.Horizon, $"start[{index}]"),
            Gap = cp.Int(0, model.Options.Horizon, $"gap[{index}]"),
            End = cp.Int(0, model.Options.Horizon, $"end[{index}]"),
            Linger = cp.Int(0, model.Scene.Brief.Pace.Linger.Value, $"linger[{index}]"),
            WalkRound = cp.Int(-model.Options.MostWalkRound, model.Options.MostWalkRound, $"round[{index}]"),
        };
        cp.Model.AddExactlyOne(uses);
        cp.Model.AddExactlyOne([.. attacks, slot.NoAttack]);
        cp.Model.AddExactlyOne([.. reactions, slot.NoReaction]);
        cp.Model.AddExactlyOne([.. targets, slot.NoTarget]);
        cp.Model.Add(slot.Target == Cp(targets, slot.NoTarget, model.Cast));
        slot.Used = mayIdle ? cp.Bool($"used[{index}]") : cp.True;
        cp.Model.Add(uses[0] + slot.Used == 1);
        if (previous is not null && mayIdle)
        {
            cp.Model.AddImplication(slot.Used, previous.Used);
        }

        slot.Answered = model.ReactionIs(slot, r => r.AnswersBlow, $"answered[{index}]");
        Fit(model, slot);
        Times(model, slot, before);
        slot.HasAttack = cp.Bool($"hasattack[{index}]");
        cp.Model.Add(slot.HasAttack + slot.NoAttack == 1);
        var same = cp.Bool($"same[{index}]");
        cp.Model.Add(slot.Target == before.LastTarget).OnlyEnforceIf(same);
        cp.Model.Add(slot.Target != before.LastTarget).OnlyEnforceIf(same.Not());
        slot.Same = same;
        var another = cp.And($"another[{index}]", slot.NoTarget.Not(), same.Not());
        slot.Opens = cp.Or($"opens[{index}]", slot.HasAttack, another);
        return slot;
    }

    private static bool May(Use use, bool mayIdle, int target) => use.Kind switch
    {
        UseKind.Idle => mayIdle,
        UseKind.NoTarget => target is -2 or -1,
        _ => target != -1,
    };

    private static LinearExpr Cp(BoolVar[] targets, BoolVar none, int cast) =>
        Engine.Cp.Sum([.. targets, none], [.. Enumerable.Range(0, cast + 1).Select(a => (long)a)]);

    private static void Fit(MoveModel model, SlotVars slot)
    {
        var cp = model.Cp;
        cp.Model.Add(model.OverUses(slot, u => u.CarriesAttack ? 1 : 0) + slot.NoAttack == 1);
        cp.Model.Add(model.OverUses(slot, u => u.HasTarget ? 1 : 0) + slot.NoReaction == 1);
        cp.Model.Add(model.OverUses(slot, u => u.HasTarget ? 1 : 0) + slot.NoTarget == 1);
        cp.Model.Add(slot.WalkRound == 0).OnlyEnforceIf(slot.NoAttack);
        var lasting = model.ReactionIs(slot, r => r.Posture is { } p && p is not (Posture.Gripping or Posture.Out) && !p.IsControlled(), $"lasting[{slot.Index}]");
        cp.Model.Add(slot.Linger == 0).OnlyEnforceIf(lasting.Not());
        var (most, unhurt) = (model.Scene.Brief.Pace.Linger.Value, model.Scene.Settle.LingerUnhurt.Value);
        if (unhurt < most)
        {
            cp.Model.Add(slot.Linger <= unhurt + model.OverUses(slot, u => u.Technique is { Beats: true } ? most : 0) + model.OverReactions(slot, r => model.Scene.Book.Reactions[r].Beats ? most : 0));
            cp.Model.Add(slot.Linger <= unhurt).OnlyEnforceIf(slot.Answered);
        }
    }

    private static void Times(MoveModel model, SlotVars slot, BoundaryVars before)
    {
        model.Cp.Model.Add(slot.Start == before.Time + slot.Gap);
        model.Cp.Model.Add(slot.End == slot.Start + model.OverUses(slot, u => u.Technique?.Length.Value ?? 0));
        if (!ReferenceEquals(slot.Uses[0], model.Cp.False))
        {
            model.Cp.Model.Add(slot.Gap == 0).OnlyEnforceIf(slot.Uses[0]);
        }
    }
}

using Generator.Domain;
using Generator.Solver.Filling;
using Google.OrTools.Sat;

namespace Generator.Solver.Rules;

/// <summary>A technique with an attack answers it; the attack suits the hero's level and comes from where it can.</summary>
public sealed class AnswersAttack : RuleModule
{
    public override string Id => "answers-attack";

    public override void Post(MoveModel model)
    {
        var at = model.Vocabulary.Attacks.Select((k, n) => (k, n)).ToDictionary(p => p.k, p => p.n);
        foreach (var slot in model.Slots)
        {
            for (var u = 0; u < slot.Uses.Length; u++)
            {
                var use = model.Vocabulary.Uses[u];
                if (use.CarriesAttack && !ReferenceEquals(slot.Uses[u], model.Cp.False))
                {
                    model.Cp.Model.AddBoolOr([slot.Uses[u].Not(), .. use.Attacks.Select(k => (ILiteral)slot.Attacks[at[k]])]);
                }
            }

            Level(model, slot);
            Whence(model, slot);
            Kneeling(model, slot);
        }
    }

    /// <summary>Whoever opened on a knee attacks from there as long as they are on it, without walking round, and not any more afterwards.</summary>
    private static void Kneeling(MoveModel model, SlotVars slot)
    {
        var cp = model.Cp;
        for (var a = 0; a < model.Cast; a++)
        {
            if (model.Scene.Brief.Attackers[a].Kneels is null || ReferenceEquals(slot.Targets[a], cp.False))
            {
                continue;
            }

            var knelt = cp.Is(slot.Before.Attackers[a].Posture, (int)Posture.Knelt, $"knelt[{slot.Index},{a}]");
            for (var n = 0; n < slot.Attacks.Length; n++)
            {
                var fromKnee = model.Scene.Book.Attacks[model.Vocabulary.Attacks[n]].FromKnee;
                cp.Model.AddBoolOr([slot.Targets[a].Not(), slot.Attacks[n].Not(), fromKnee ? knelt : knelt.Not()]);
                if (fromKnee)
                {
                    cp.Model.Add(slot.WalkRound == 0).OnlyEnforceIf([slot.Targets[a], slot.Attacks[n]]);
                }
            }
        }
    }

    private static void Level(MoveModel model, SlotVars slot)
    {
        var examples = model.Classes.HeroStanceExamples;
        var level = model.Cp.ClassOf([.. slot.Attacks, slot.NoAttack], [.. model.Classes.HeroStances, examples.Count], $"level[{slot.Index}]");
        var rows = new List<long[]>();
        foreach (var stance in Enum.GetValues<Stance>())
        {
            rows.Add([examples.Count, (int)stance]);
            rows.AddRange(Enumerable.Range(0, examples.Count).Where(c => model.Scene.Book.Attacks[examples[c]].HeroStances.Contains(stance)).Select(c => new long[] { c, (int)stance }));
        }

        model.Cp.Table([level, slot.StanceForAttack], rows);
    }

    private static void Whence(MoveModel model, SlotVars slot)
    {
        var examples = model.Classes.FromWindowExamples;
        var from = model.Cp.ClassOf([.. slot.Attacks, slot.NoAttack], [.. model.Classes.FromWindow, examples.Count], $"whence[{slot.Index}]");
        var rows = new List<long[]>();
        for (var relative = 0; relative < Bearing.Circle; relative++)
        {
            var turn = default(Bearing).To(new Bearing(relative));
            rows.Add([examples.Count, relative]);
            rows.AddRange(Enumerable.Range(0, examples.Count).Where(c => model.Scene.Book.Attacks[examples[c]].From.Contains(turn)).Select(c => new long[] { c, relative }));
        }

        model.Cp.Table([from, slot.Relative], rows);
    }
}

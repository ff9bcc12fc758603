using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Combining;
using Generator.Solver.Filling;
using Google.OrTools.Sat;

namespace Generator.Solver.Rules;

/// <summary>Who throws a combination in the rows of a model, for the rule of manner.</summary>
internal static class Combinations
{
    /// <summary>A literal for each combination that an attacker may end in one of the rows: true exactly where they do.</summary>
    /// <param name="model">The rows.</param>
    /// <param name="attacker">Whose.</param>
    /// <param name="run">The attacks in a row with which the rows begin.</param>
    public static IReadOnlyList<ILiteral> Of(MoveModel model, int attacker, AttackRun run)
    {
        var thrown = new List<ILiteral>();
        foreach (var slot in model.Slots)
        {
            foreach (var form in model.Scene.Combinations.All)
            {
                if (Literals(model, attacker, run, form, slot.Index) is { } all)
                {
                    thrown.Add(model.Cp.And($"combines[{slot.Index},{attacker},{form.Number}]", all));
                }
            }
        }

        return thrown;
    }

    /// <summary>What must hold for a form to end in a row; null where it cannot.</summary>
    private static ILiteral[]? Literals(MoveModel model, int attacker, AttackRun run, CombinationForm form, int end)
    {
        var (cp, all) = (model.Cp, new List<ILiteral>());
        for (int part = form.Attacks.Count - 1, row = end; part >= 0; part--, row--)
        {
            if (row < 0)
            {
                return Follows(model, attacker, run, form, part + 1) is { } soon ? [.. all, soon] : null;
            }

            var (slot, id) = (model.Slots[row], model.Scene.Book.Attacks[form.Attacks[part]].Id);
            var comes = model.AttackIs(slot, k => string.Equals(k.Id, id, StringComparison.Ordinal), $"comesby[{row},{id}]");
            if (cp.IsFalse(comes) || cp.IsFalse(slot.Targets[attacker]))
            {
                return null;
            }

            all.AddRange([comes, slot.Targets[attacker]]);
            if (row < end)
            {
                all.Add(model.ReactionIs(slot, r => r.Posture == Posture.Ready, $"staysready[{row}]"));
                all.Add(cp.AtMost(model.Slots[row + 1].Start, slot.Start + form.Gap, $"soon[{row},{form.Gap}]"));
            }
        }

        return [.. all];
    }

    /// <summary>The run leads up to a form whose number <paramref name="next"/> is thrown in the first row, if that row starts soon enough; null where it does not.</summary>
    private static BoolVar? Follows(MoveModel model, int attacker, AttackRun run, CombinationForm form, int next)
    {
        var latest = run.LastContact + form.Gap;
        return run.Attacker == attacker && run.Leads(form, next, latest)
            ? model.Cp.UpTo(model.Slots[0].Start, latest - model.Scene.Settle.ContactAfter.Value)
            : null;
    }
}

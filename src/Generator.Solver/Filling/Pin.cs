using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Solver.Filling;

/// <summary>Fixes a model's choices to given rows. What the model cannot express makes it infeasible.</summary>
public static class Pin
{
    /// <summary>Fixes the opening.</summary>
    public static void Placements(MoveModel model, IReadOnlyList<Placement> placements)
    {
        for (var a = 0; a < model.Cast; a++)
        {
            model.Cp.Model.Add(model.Start.Attackers[a].Bearing == placements[a].Bearing.HalfHours);
            model.Cp.Model.Add(model.Start.Attackers[a].Distance == placements[a].Distance.Value);
            model.Cp.Model.Add(model.Entrances[a] == placements[a].Entrance.Value);
        }
    }

    /// <summary>Fixes the rows from the first on; rows beyond them are left idle.</summary>
    public static void Rows(MoveModel model, IReadOnlyList<Row> rows)
    {
        if (rows.Count > model.Slots.Count)
        {
            model.Cp.Model.AddBoolOr([]);
            return;
        }

        foreach (var slot in model.Slots)
        {
            if (slot.Index >= rows.Count)
            {
                model.Cp.Model.Add(slot.Used == 0);
                continue;
            }

            var row = rows[slot.Index];
            var solver = model.Cp.Model;
            solver.Add(slot.Used == 1);
            solver.Add(slot.Start == row.Start);
            solver.Add(slot.Target == (row.Attacker < 0 || NoTarget(model, row) ? model.Cast : row.Attacker));
            solver.Add(model.OverUses(slot, u => u.Index == row.Technique && row.Technique >= 0 && u.CarriesAttack == row.Attack >= 0 ? 1 : 0) == 1);
            solver.Add(row.Attack < 0 ? slot.NoAttack == 1 : model.OverAttacks(slot, k => k == row.Attack ? 1 : 0) == 1);
            solver.Add(row.Reaction < 0 ? slot.NoReaction == 1 : model.OverReactions(slot, r => r == row.Reaction ? 1 : 0) == 1);
            solver.Add(slot.Linger == row.Linger);
            if (row.From >= 0)
            {
                solver.Add(slot.TargetBearing == row.From);
            }
            else
            {
                solver.Add(slot.WalkRound == 0);
            }
        }
    }

    private static bool NoTarget(MoveModel model, Row row) => row.Technique >= 0 && model.Scene.Book.Techniques[row.Technique].HasNoTarget;
}

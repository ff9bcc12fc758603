using Generator.Rules.Replaying;
using Generator.Solver.Engine;
using Generator.Solver.Filling;
using Generator.Solver.Rules;
using Google.OrTools.Sat;

namespace Generator.Solver.Tests.Twin;

/// <summary>Tiny worlds by CP-SAT.</summary>
internal static class Solved
{
    public static readonly SearchSettings Settings = new() { Time = Constructing.Drafts.Hang, Bare = true, Linear = false };

    /// <summary>The whole world as a model, its opening fixed.</summary>
    public static MoveModel Model(TinyWorld world, bool inOneTable = false, params RuleModule[] besides)
    {
        var model = new MoveModel(world.Scene, Vocabulary.Of(world.Scene, seconds: true), new MoveModelOptions
        {
            Rules = [.. RuleModules.All, .. besides],
            Rows = world.Rows,
            FewestRows = 1,
            Ends = true,
            MostWalkRound = 0,
            Horizon = 40,
            InOneTable = inOneTable,
        });
        Pin.Placements(model, world.Placements);
        foreach (var slot in model.Slots)
        {
            model.Cp.Model.Add(slot.Gap <= world.MostGap);
        }

        return model;
    }

    /// <summary>Solves again and again, each time without what has been found.</summary>
    public static Dictionary<string, long> AllOf(MoveModel model, int most)
    {
        var found = new Dictionary<string, long>(StringComparer.Ordinal);
        while (found.Count < most)
        {
            using var session = model.Session();
            var answer = session.Solve(Settings);
            if (answer == CpAnswer.Infeasible)
            {
                break;
            }

            Assert.True(session.HasSolution);
            var rows = RowReader.Rows(model, session);
            found.Add(Exhaustive.Key(rows), session.Value(model.Points));
            Forbid(model, rows);
        }

        return found;
    }

    private static void Forbid(MoveModel model, IReadOnlyList<Row> rows)
    {
        var differs = new List<ILiteral>();
        foreach (var slot in model.Slots)
        {
            if (slot.Index >= rows.Count)
            {
                differs.Add(slot.Used);
                continue;
            }

            var row = rows[slot.Index];
            differs.Add(slot.Used.Not());
            differs.Add(model.Cp.Is(slot.Start, row.Start, "was").Not());
            differs.Add(model.Cp.Is(slot.Target, row.Attacker < 0 ? model.Cast : row.Attacker, "was").Not());
            differs.Add(model.UseIs(slot, u => u.Index == row.Technique && u.CarriesAttack == row.Attack >= 0, "was").Not());
            differs.Add(row.Attack < 0 ? slot.HasAttack : slot.Attacks[model.Vocabulary.Attacks.ToList().IndexOf(row.Attack)].Not());
            differs.Add(row.Reaction < 0 ? slot.NoReaction.Not() : slot.Reactions[model.Vocabulary.Reactions.ToList().IndexOf(row.Reaction)].Not());
        }

        model.Cp.Model.AddBoolOr(differs);
    }
}

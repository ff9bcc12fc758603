using Generator.Domain;
using Generator.Rules.Replaying;
using Generator.Solver.Engine;
using Google.OrTools.Sat;

namespace Generator.Solver.Filling;

/// <summary>Reads a solved model off as rows of a routine, and the delays and opening that go with them.</summary>
public static class RowReader
{
    /// <summary>The rows that are used, in order.</summary>
    public static IReadOnlyList<Row> Rows(MoveModel model, CpSession session) => Rows(model, session.Value);

    /// <summary>The same from values that came about otherwise.</summary>
    public static IReadOnlyList<Row> Rows(MoveModel model, Func<IntVar, long> value)
    {
        var rows = new List<Row>();
        foreach (var slot in model.Slots.Where(s => value(s.Used) == 1))
        {
            var use = model.Vocabulary.Uses[Chosen(value, slot.Uses)];
            var attack = Chosen(value, slot.Attacks);
            var reaction = Chosen(value, slot.Reactions);
            var target = (int)value(slot.Target);
            var walks = value(slot.WalkRound) != 0;
            var seen = default(Bearing).Apart(new Bearing((int)value(slot.SeenFrom)));
            var unseen = attack >= 0 && seen > model.Scene.Settle.SightHalfAngle;
            rows.Add(new Row(
                (int)value(slot.Start),
                target == model.Cast ? -1 : target,
                walks ? (int)value(slot.TargetBearing) : -1,
                unseen ? Cue.Voice : Cue.None,
                attack < 0 ? -1 : model.Vocabulary.Attacks[attack],
                use.Index,
                reaction < 0 ? -1 : model.Vocabulary.Reactions[reaction],
                (int)value(slot.Linger))
            {
                Hurt = model.Hurts[slot.Index].FirstOrDefault(h => value(h.When) == 1)?.Said,
            });
        }

        return rows;
    }

    /// <summary>The opening that the model chose (its start must not have been fixed).</summary>
    public static IReadOnlyList<Placement> Placements(MoveModel model, CpSession session) => Placements(model, session.Value);

    /// <summary>The same from values that came about otherwise.</summary>
    public static IReadOnlyList<Placement> Placements(MoveModel model, Func<IntVar, long> value) =>
    [
        .. model.Start.Attackers.Select((a, i) => new Placement(
            new Bearing((int)value(a.Bearing)),
            new Centimetres((int)value(a.Distance)),
            new HalfCounts((int)value(model.Entrances[i])))),
    ];

    /// <summary>Half counts by which each attacker's return or entrance is delayed before the first row.</summary>
    public static IReadOnlyList<int> Delays(MoveModel model, CpSession session) => [.. model.Delays.Select(d => (int)session.Value(d))];

    private static int Chosen(Func<IntVar, long> value, BoolVar[] literals) => Array.FindIndex(literals, l => value(l) == 1);
}

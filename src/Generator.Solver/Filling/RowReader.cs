using Generator.Domain;
using Generator.Rules.Replaying;
using Generator.Solver.Engine;

namespace Generator.Solver.Filling;

/// <summary>Reads a solved model off as rows of a routine, and the delays and opening that go with them.</summary>
public static class RowReader
{
    /// <summary>The rows that are used, in order.</summary>
    public static IReadOnlyList<Row> Rows(MoveModel model, CpSession session)
    {
        var rows = new List<Row>();
        foreach (var slot in model.Slots.Where(s => session.IsTrue(s.Used)))
        {
            var use = model.Vocabulary.Uses[Chosen(session, slot.Uses)];
            var attack = Chosen(session, slot.Attacks);
            var reaction = Chosen(session, slot.Reactions);
            var target = (int)session.Value(slot.Target);
            var walks = session.Value(slot.WalkRound) != 0;
            var seen = default(Bearing).Apart(new Bearing((int)session.Value(slot.SeenFrom)));
            var unseen = attack >= 0 && seen > model.Scene.Settle.SightHalfAngle;
            rows.Add(new Row(
                (int)session.Value(slot.Start),
                target == model.Cast ? -1 : target,
                walks ? (int)session.Value(slot.TargetBearing) : -1,
                unseen ? Cue.Voice : Cue.None,
                attack < 0 ? -1 : model.Vocabulary.Attacks[attack],
                use.Index,
                reaction < 0 ? -1 : model.Vocabulary.Reactions[reaction],
                (int)session.Value(slot.Linger)));
        }

        return rows;
    }

    /// <summary>The opening that the model chose (its start must not have been fixed).</summary>
    public static IReadOnlyList<Placement> Placements(MoveModel model, CpSession session) =>
    [
        .. model.Start.Attackers.Select((a, i) => new Placement(
            new Bearing((int)session.Value(a.Bearing)),
            new Centimetres((int)session.Value(a.Distance)),
            new HalfCounts((int)session.Value(model.Entrances[i])))),
    ];

    /// <summary>Half counts by which each attacker's return or entrance is delayed before the first row.</summary>
    public static IReadOnlyList<int> Delays(MoveModel model, CpSession session) => [.. model.Delays.Select(d => (int)session.Value(d))];

    private static int Chosen(CpSession session, Google.OrTools.Sat.BoolVar[] literals) => Array.FindIndex(literals, session.IsTrue);
}

using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Replaying;

namespace Generator.Solver.Constructing;

/// <summary>A routine that is given as a path of the search, so that another may go its own way from any place in it.</summary>
internal static class RoutinePath
{
    /// <summary>From the opening as far as the routine goes without anything that the brief or a rule forbids; empty where it cannot even open.</summary>
    public static List<Node> Of(Ground ground, Routine routine)
    {
        var rows = StanceNotes.LeftOut(routine).Moves.Select(m => Row.Of(m, ground.Scene)).ToList();
        if (rows.Count == 0 || !ground.Scene.Brief.Attackers.Zip(routine.Placements).All(p => OpensAsAsked(p.First, p.Second)))
        {
            return [];
        }

        var expander = new Expander(ground, new Dice(1));
        var path = new List<Node> { ground.Opening(routine.Placements, rows[0].Attacker, rows[0].Start) };
        foreach (var row in rows)
        {
            if (row.Technique < 0 || expander.AsWritten(path[^1], row) is not { } next)
            {
                break;
            }

            path.Add(next);
        }

        return path;
    }

    private static bool OpensAsAsked(AttackerPart part, Placement placement) =>
        (part.Bearing ?? placement.Bearing) == placement.Bearing && (part.Distance ?? placement.Distance) == placement.Distance && (part.Entrance ?? placement.Entrance) == placement.Entrance;
}

using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;
using Generator.Solver.Completing;
using Generator.Solver.Constructing;
using Generator.Solver.Tests.Constructing;
using Generator.Testing;

namespace Generator.Solver.Tests.Completing;

/// <summary>Looking ahead rules out only what has no filling: a clean routine fills every sketch that was made of it, so no beginning of it is ever ruled out.</summary>
public class SketchAheadTests
{
    private const int Routines = 3;

    [Fact]
    public void No_beginning_of_a_filling_is_ruled_out()
    {
        var (asked, refused) = (0, new List<string>());
        foreach (var (routine, number) in StoredRoutines.All(Drafts.Book).Where(r => Audit.Of(new Scene(r.Brief, Drafts.Book), r).IsClean).Select((r, i) => (r, i + 1)).Take(Routines))
        {
            var beginnings = Beginnings(routine);
            foreach (var erasing in Enum.GetValues<Erasing>())
            {
                var percent = 30 + (asked % 71);
                var ahead = Ahead(Erased.Of(routine, new Chance(asked), erasing, percent));
                for (var i = 0; i < beginnings.Count; i++)
                {
                    asked++;
                    if (!ahead.MayGoOn(beginnings[i], i, 0))
                    {
                        refused.Add($"routine {number}, {erasing} {percent} %, before move {i + 1}");
                    }
                }
            }
        }

        Assert.True(asked > 500, $"{asked} beginnings");
        Assert.True(refused.Count == 0, $"{refused.Count} of {asked}\n{string.Join("\n", refused)}");
    }

    private static SketchAhead Ahead(Sketch sketch)
    {
        var ground = Ground(sketch.Brief);
        SketchStep[] steps = [.. sketch.Moves.Select(m => new SketchStep(ground.Scene, ground.Repertoire, m))];
        return new SketchAhead(ground, steps, new SketchMarks(ground.Aims, steps), new Lingering(ground.Scene), new SketchForms(ground.Scene, ground.Repertoire, steps));
    }

    private static Ground Ground(Brief brief)
    {
        var scene = new Scene(brief, Drafts.Book);
        return new Ground(scene, [.. Enumerable.Repeat(true, scene.Cast)]);
    }

    /// <summary>The routine move by move, from the opening to the end.</summary>
    private static List<Node> Beginnings(Routine routine)
    {
        var ground = Ground(routine.Brief);
        var expander = new Expander(ground, new Dice(1));
        var rows = Replay.Of(ground.Scene, routine).Select(s => s.Row).ToList();
        var nodes = new List<Node> { ground.Opening(routine.Placements, rows[0].Attacker, rows[0].Start) };
        foreach (var row in rows)
        {
            nodes.Add(expander.AsWritten(nodes[^1], row) ?? throw new InvalidOperationException($"Move {nodes.Count} does not stand as it is written."));
        }

        return nodes;
    }
}

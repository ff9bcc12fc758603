using System.Collections.Concurrent;
using Generator.Domain;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;

namespace Generator.Solver.Tests.Twin;

/// <summary>The naive twin: tries every routine of a tiny world with Replay and the audit's rules alone.</summary>
internal static class Exhaustive
{
    /// <summary>Many tests ask for the same worlds, and each is tried once.</summary>
    private static readonly ConcurrentDictionary<object, Lazy<IReadOnlyList<(Row[] Rows, int Points)>>> Tried = [];

    /// <summary>Every routine without an unsafe or broken finding, with its points.</summary>
    public static Dictionary<string, int> Clean(TinyWorld world)
    {
        var found = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var (rows, points) in All(world))
        {
            found[Key(rows)] = points;
        }

        return found;
    }

    /// <summary>The same as routines.</summary>
    public static IReadOnlyList<Routine> Routines(TinyWorld world) =>
        [.. All(world).Select(f => new Routine { Brief = world.Brief, Placements = world.Placements, Moves = [.. f.Rows.Select(r => r.ToMove(world.Scene))] })];

    public static string Key(IEnumerable<Row> rows) =>
        string.Join(" ; ", rows.Select(r => $"{r.Start} {r.Attacker} {r.Attack} {r.Technique} {r.Reaction}"));

    private static IReadOnlyList<(Row[] Rows, int Points)> All(TinyWorld world) => Tried.GetOrAdd(world.Drawn, _ => new(() =>
    {
        var found = new List<(Row[] Rows, int Points)>();
        var open = Replay.Open(world.Scene, world.Placements);
        Extend(world, open, Score.Begin(world.Scene, open), [], (rows, points) => found.Add(([.. rows], points)));
        return found;
    })).Value;

    private static void Extend(TinyWorld world, FightState state, Score score, List<Row> rows, Action<IReadOnlyList<Row>, int> found)
    {
        if (score.Forbidden > 0)
        {
            return;
        }

        var end = score.Close(world.Scene, state);
        if (rows.Count > 0 && end.Forbidden == 0)
        {
            found(rows, end.Points);
        }

        if (rows.Count == world.Rows)
        {
            return;
        }

        foreach (var row in Next(world, state))
        {
            var step = Replay.Step(world.Scene, state, row);
            rows.Add(row);
            Extend(world, step.After, score.Observe(world.Scene, step), rows, found);
            rows.RemoveAt(rows.Count - 1);
        }
    }

    private static IEnumerable<Row> Next(TinyWorld world, FightState state)
    {
        var book = world.Book;
        for (var gap = 0; gap <= world.MostGap; gap++)
        {
            for (var t = 0; t < book.Techniques.Count; t++)
            {
                if (book.Techniques[t].HasNoTarget)
                {
                    yield return new Row(state.Time + gap, -1, -1, Cue.None, -1, t, -1, 0);
                    continue;
                }

                foreach (var reaction in book.Techniques[t].Reactions)
                {
                    for (var a = 0; a < world.Scene.Cast; a++)
                    {
                        for (var k = -1; k < book.Attacks.Count; k++)
                        {
                            var row = new Row(state.Time + gap, a, -1, Cue.Voice, k, t, book.ReactionIndex(reaction), 0);
                            if (state.Moves > 0 || Replay.LeadIn(world.Scene, world.Placements, row) == 0)
                            {
                                yield return row;
                            }
                        }
                    }
                }
            }
        }
    }
}

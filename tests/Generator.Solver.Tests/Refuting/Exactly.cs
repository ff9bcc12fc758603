using Generator.Domain;
using Generator.Library;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Solver.Reworking;

namespace Generator.Solver.Tests.Refuting;

/// <summary>Briefs that ask a routine for exactly what it has, so that it satisfies each of them with nothing to spare.</summary>
internal static class Exactly
{
    /// <summary>By counts, by moves and by both, each with the places, entrances, setbacks, pauses, falls, hits and those out, and with each move in turn as a moment at its count.</summary>
    public static IEnumerable<Brief> As(Routine routine, Book book)
    {
        var steps = Replay.Of(new Scene(routine.Brief, book), routine);
        var end = steps[^1].After;
        var counts = (end.Time + 1) / 2;
        Length[] lengths = [new(counts, null, end.Time % 2), new(counts, routine.Moves.Count, end.Time % 2), new(null, routine.Moves.Count, 0)];
        var moments = steps.Select((_, i) => Kept.Run(routine, i, i)).ToList();
        var runs = Enumerable.Range(0, steps.Count / 2).Select(i => Kept.Run(routine, 2 * i, (2 * i) + 1, null, new HalfCounts(steps[2 * i].Start))).ToList();
        foreach (var (length, i) in lengths.Select((l, i) => (l, i)))
        {
            yield return routine.Brief with
            {
                Length = length,
                Setbacks = steps.Count(s => s.Technique!.Family == Family.Setback),
                Pauses = steps.Count(s => s.Technique!.IsStoryPause),
                Moments = i == 0 ? moments : i == 1 ? runs : [.. moments.Where((_, m) => m % 2 == 0)],
                Attackers = [.. routine.Brief.Attackers.Select((a, k) => a with
                {
                    Bearing = routine.Placements[k].Bearing,
                    Distance = routine.Placements[k].Distance,
                    Entrance = routine.Placements[k].Entrance,
                    FallsPerRun = end.Attackers[k].Falls,
                })],
                Ending = new Ending([.. routine.Brief.Attackers.Where((a, k) => end.Attackers[k].Posture == Posture.Out && routine.Brief.Ending?.Out.Contains(a.Name) == true).Select(a => a.Name)], routine.Brief.Ending?.Last),
            };
        }
    }
}

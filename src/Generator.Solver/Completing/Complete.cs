using Generator.Domain;
using Generator.Domain.Sketches;
using Generator.Library;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;
using Generator.Solver.Constructing;

namespace Generator.Solver.Completing;

/// <summary>
/// Fills a sketch so that the audit finds nothing unsafe or broken in it and the least of what was said gives: first with nothing given up, then
/// with something round the moves at which that stuck.
/// </summary>
public static class Complete
{
    private static readonly int[] Widths = [12, 32, 24, 64];

    /// <summary>The best filling that was found; null when there is none.</summary>
    /// <param name="sketch">What is said and what is open.</param>
    /// <param name="book">The library.</param>
    /// <param name="options">Seed and time.</param>
    /// <param name="better">Told of every better filling.</param>
    /// <param name="stop">Ends the search; the best so far is returned.</param>
    public static Completed? Of(Sketch sketch, Book book, CompleteOptions options, Action<Completed>? better = null, CancellationToken stop = default)
    {
        using var ends = CancellationTokenSource.CreateLinkedTokenSource(stop);
        ends.CancelAfter(options.Time);
        var scene = new Scene(Searched(sketch), book);
        var ground = new Ground(scene, [.. Enumerable.Repeat(true, scene.Cast)]);
        var choices = sketch.Moves.Select(m => new MoveChoices(scene, m)).ToArray();
        Completed? best = null;
        for (var round = 0; !ends.IsCancellationRequested && best?.Price is not 0; round++)
        {
            var dice = new Dice(Dice.SeedOf(options.Seed, 0, round));
            var search = new SketchSearch(ground, sketch, choices, dice, Widths[round % Widths.Length], ends.Token);
            if (search.Run(Roots(ground, sketch, dice), new bool[sketch.Moves.Count + 1], round > 0, best?.Price ?? long.MaxValue) is { } found)
            {
                best = Told(sketch, book, found.Whole, Draftsman.RoutineOf(scene, found.Finish));
                better?.Invoke(best);
            }
        }

        return best;
    }

    /// <summary>The brief as the search takes it: as long as what is written and what was left room for, and nobody has to go out.</summary>
    private static Brief Searched(Sketch sketch)
    {
        var said = sketch.Moves.Count(m => !m.IsGap);
        var room = sketch.Moves.Sum(m => m.Open);
        var brief = sketch.Brief;
        return brief with
        {
            Length = brief.Length ?? new Length(null, Math.Clamp(said + (room / 2), 1, 500), 4 + (said / 2) + room),
            Ending = brief.Ending ?? new Ending([], null),
            Attackers = [.. brief.Attackers.Select((a, i) => sketch.Placements[i] is { } place
                ? a with { Bearing = place.Bearing, Distance = place.Distance, Entrance = place.Entrance > HalfCounts.Zero ? place.Entrance : a.Entrance } : a)],
        };
    }

    private static IEnumerable<Node> Roots(Ground ground, Sketch sketch, Dice dice)
    {
        var first = sketch.Moves.FirstOrDefault(m => !m.IsGap);
        for (var i = 0; i < 3; i++)
        {
            if (Constructing.Staging.Choose(ground, dice) is not { } placements)
            {
                yield break;
            }

            var openings = ground.Openings(placements).ToList();
            foreach (var root in openings.Where(r => first?.Attacker is not { } a || r.First == a || sketch.Moves[0].IsGap))
            {
                yield return root;
            }

            // The first count that was said.
            if (first is { Attacker: { } who, Count: { } count })
            {
                for (var start = count.First.Value; start <= Math.Min(count.Last.Value, count.First.Value + 4); start++)
                {
                    yield return ground.Opening(placements, who, start);
                }
            }
        }
    }

    /// <summary>Audited with the brief as it was given.</summary>
    /// <exception cref="DisagreementException">The audit finds something forbidden: a fault of the program.</exception>
    private static Completed Told(Sketch sketch, Book book, Beginning whole, Routine found)
    {
        var routine = found with { Brief = sketch.Brief };
        var verdict = Audit.Of(new Scene(sketch.Brief, book), routine);
        return verdict.IsClean ? new Completed(sketch, routine, verdict, [.. whole.Gave.OrderBy(g => g.Move)], whole.Rows)
            : throw new DisagreementException($"A completed sketch is not clean: {verdict.Findings.First(f => f.Severity >= Severity.Broken).Message}");
    }
}

using Generator.Domain;
using Generator.Rules.Replaying;
using Generator.Solver.Reworking;

namespace Generator.Solver.Revising;

/// <summary>Who has to learn what anew when a routine was changed, and what rehearsal can skip.</summary>
public sealed record Reteaching
{
    /// <summary>The hero first, then the attackers in the order of the brief.</summary>
    public required IReadOnlyList<Relearned> People { get; init; }

    public required IReadOnlyList<UnchangedRun> Unchanged { get; init; }

    /// <summary>What is elsewhere on the floor though nothing of it changes.</summary>
    public required MarkNews Marks { get; init; }

    /// <summary>Sum over everybody.</summary>
    public int Cost => People.Sum(p => p.Cost);

    /// <summary>Works it out.</summary>
    /// <param name="reworked">The change.</param>
    /// <param name="weights">What re-teaching costs.</param>
    /// <param name="marks">What marks that have moved make different.</param>
    /// <param name="gone">Moves that went with attackers who are no longer in it; the hero has to forget them.</param>
    public static Reteaching Of(Reworked reworked, TeachingWeights weights, MarkNews marks, int gone = 0)
    {
        Relearned Walked(Relearned person, int who) => marks.WaysOf(who) is var ways and > 0 ? person with { Ways = ways, Cost = person.Cost + (ways * weights.Count) } : person;
        var gaps = Gaps(reworked);
        var brief = reworked.Scene.Brief;
        var people = brief.Attackers.Select((a, i) => Person(a.Name, i, reworked, gaps, weights)).Prepend(WithGone(Person(brief.Hero.Name, -1, reworked, gaps, weights), gone, weights)).Select((p, i) => Walked(p, i - 1));
        return new Reteaching { People = [.. people], Unchanged = [.. Runs(reworked)], Marks = marks };
    }

    /// <summary>Positions in the new routine of moves that stay, but come sooner or later after the move before.</summary>
    private static HashSet<int> Gaps(Reworked reworked)
    {
        var old = Replay.Of(reworked.Scene, reworked.Old);
        var now = Replay.Of(reworked.Scene, reworked.Routine);
        return [.. reworked.Change.Moves.Where(m => m.Kind == ChangeKind.Shifted && m.Now > 0 && m.Old > 0 && old[m.Old].Gap != now[m.Now].Gap).Select(m => m.Now)];
    }

    private static Relearned Person(string name, int attacker, Reworked reworked, HashSet<int> gaps, TeachingWeights weights)
    {
        var (moves, gone, counts, cost) = (0, 0, 0, 0);
        foreach (var change in reworked.Change.Moves)
        {
            var was = change.Old < 0 ? null : reworked.Old.Moves[change.Old];
            var now = change.Now < 0 ? null : reworked.Routine.Moves[change.Now];
            var (had, has) = (Concerns(was, attacker), Concerns(now, attacker));
            if (has && change.Now >= 0 && gaps.Contains(change.Now))
            {
                counts++;
                cost += weights.Count;
            }
            else if (has && change.Kind >= ChangeKind.Changed && !(had && DoesTheSame(was!, now!, attacker)))
            {
                moves++;
                cost += had && was!.Attacker == now!.Attacker ? weights.Technique : weights.Order;
            }
            else if (had && !has)
            {
                gone++;
                cost += weights.Order / 2;
            }
        }

        return new Relearned(name, moves, gone, counts, 0, cost);
    }

    private static Relearned WithGone(Relearned hero, int gone, TeachingWeights weights) => hero with { Gone = hero.Gone + gone, Cost = hero.Cost + (gone * weights.Order / 2) };

    private static bool Concerns(Move? move, int attacker) => move is not null && (attacker < 0 || move.Attacker == attacker);

    private static bool DoesTheSame(Move was, Move now, int attacker) => was.Attacker == now.Attacker && (attacker < 0
        ? Equal(was.Technique, now.Technique) && was.To == now.To
        : Equal(was.Attack, now.Attack) && Equal(was.Reaction, now.Reaction));

    private static bool Equal(string? one, string? other) => string.Equals(one, other, StringComparison.Ordinal);

    private static IEnumerable<UnchangedRun> Runs(Reworked reworked)
    {
        UnchangedRun? run = null;
        foreach (var change in reworked.Change.Moves)
        {
            var stays = change.Kind <= ChangeKind.Shifted;
            var shift = stays ? reworked.Routine.Moves[change.Now].Start.Value - reworked.Old.Moves[change.Old].Start.Value : 0;
            if (stays && run is not null && run.Last + 1 == change.Now && run.WasFirst + change.Now - run.First == change.Old && shift == run.Shift)
            {
                run = run with { Last = change.Now };
                continue;
            }

            if (run is not null)
            {
                yield return run;
            }

            run = stays ? new UnchangedRun(change.Now, change.Now, change.Old, shift) : null;
        }

        if (run is not null)
        {
            yield return run;
        }
    }
}

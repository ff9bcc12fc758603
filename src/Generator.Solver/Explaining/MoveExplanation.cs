using Generator.Domain;
using Generator.Library;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;

namespace Generator.Solver.Explaining;

/// <summary>Why this move and not another: every other technique in its place, replayed and audited.</summary>
public sealed record MoveExplanation
{
    public required Scene Scene { get; init; }

    /// <summary>Position of the move, from 0.</summary>
    public required int Move { get; init; }

    /// <summary>Techniques that would do as well, the fewest points first.</summary>
    public required IReadOnlyList<MoveCandidate> Fitting { get; init; }

    /// <summary>Techniques that something forbids, by the first rule that does, the rule that excludes most first.</summary>
    public required IReadOnlyList<(string Rule, IReadOnlyList<MoveCandidate> Candidates)> Excluded { get; init; }

    /// <summary>Tries every other technique in the place of a move: same count, same attack, each suiting reaction.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such move.</exception>
    public static MoveExplanation Of(Routine routine, int move, Book book, CancellationToken stop = default)
    {
        if (move < 0 || move >= routine.Moves.Count)
        {
            throw new ArgumentOutOfRangeException(nameof(move), move, $"The routine has {routine.Moves.Count} moves.");
        }

        var scene = new Scene(routine.Brief, book);
        routine = StanceNotes.LeftOut(routine);
        var before = Audit.Of(scene, routine);
        var old = before.Grave;
        var candidates = new List<MoveCandidate>();
        foreach (var technique in book.Techniques.TakeWhile(_ => !stop.IsCancellationRequested))
        {
            if (!string.Equals(technique.Id, routine.Moves[move].Technique, StringComparison.Ordinal))
            {
                candidates.Add(Best(scene, routine, move, technique, old, before.Points));
            }
        }

        return new MoveExplanation
        {
            Scene = scene,
            Move = move,
            Fitting = [.. candidates.Where(c => c.Against is null).OrderBy(c => c.Points)],
            Excluded = [.. candidates.Where(c => c.Against is not null).GroupBy(c => c.Against!.Rule, StringComparer.Ordinal).OrderByDescending(g => g.Count()).Select(g => (g.Key, (IReadOnlyList<MoveCandidate>)[.. g]))],
        };
    }

    /// <summary>With the reaction after which the routine goes on longest.</summary>
    private static MoveCandidate Best(Scene scene, Routine routine, int move, Technique technique, IReadOnlyList<Finding> old, int points)
    {
        MoveCandidate? best = null;
        int? next = (routine.Moves.Take(move).LastOrDefault(m => m.To is not null)?.To ?? 0) + 1 is var mark && mark < scene.Marks.Count ? mark : null;
        foreach (var reaction in technique.Reactions.Count == 0 ? [null] : technique.Reactions.Cast<string?>())
        {
            var moves = routine.Moves.ToArray();
            moves[move] = moves[move] with { Technique = technique.Id, Reaction = reaction, To = technique.Travel is null ? null : moves[move].To ?? next };
            var verdict = Audit.Of(scene, routine with { Moves = moves });
            var against = verdict.Grave.Except(old).OrderBy(f => f.Move == 0 ? int.MaxValue : f.Move).FirstOrDefault();
            var candidate = new MoveCandidate(technique, reaction, against, against is null ? verdict.Points - points : 0);
            if (best is null || Reach(candidate) > Reach(best) || (Reach(candidate) == Reach(best) && candidate.Points < best.Points))
            {
                best = candidate;
            }
        }

        return best!;
    }

    /// <summary>The move at which something forbids it; a fault of the whole comes after all moves.</summary>
    private static int Reach(MoveCandidate candidate) => candidate.Against switch
    {
        null => int.MaxValue,
        { Move: 0 } => int.MaxValue - 1,
        var finding => finding.Move,
    };
}

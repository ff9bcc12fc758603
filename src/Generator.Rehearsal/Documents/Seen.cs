using Generator.Domain;
using Generator.Domain.Edits;
using Generator.Domain.Sketches;
using Generator.Library;
using Generator.Library.Files;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;

namespace Generator.Rehearsal.Documents;

/// <summary>
/// What can be said of a sketch at once: everything where all of it is settled, else what the moves before the first open one are found to do. Nothing
/// that comes later can take such a finding back, because the audit walks from move to move.
/// </summary>
/// <param name="Routine">The moves that are settled, from the first on.</param>
/// <param name="Verdict">What the audit says of them.</param>
/// <param name="Open">Number of the first move in which something is open, from 0; null when nothing is.</param>
public sealed record Seen(Routine Routine, Verdict Verdict, int? Open)
{
    public static Seen Of(Scene scene, Sketch sketch)
    {
        var moves = new List<Move>();
        foreach (var move in sketch.Moves)
        {
            if (Settled(scene.Book, move) is not { } settled)
            {
                break;
            }

            moves.Add(settled);
        }

        var routine = new Routine { Brief = sketch.Brief, LibraryVersion = scene.Book.Version, Placements = [.. sketch.Placements.Zip(Placing.Usual(sketch.Brief, moves), (said, usual) => said ?? usual)], Moves = moves };
        return moves.Count == sketch.Moves.Count ? new Seen(routine, Audit.Of(scene, routine), null) : new Seen(routine, SoFar(scene, routine), moves.Count);
    }

    private static Verdict SoFar(Scene scene, Routine routine)
    {
        var words = new List<Finding>();
        var state = Replay.Open(scene, routine);
        var score = Score.Begin(scene, state, words);
        foreach (var step in Replay.From(scene, state, routine))
        {
            score = score.Observe(scene, step, words);
        }

        return new Verdict([.. words.OrderBy(f => f.Count).ThenBy(f => f.Move).ThenByDescending(f => f.Severity).ThenBy(f => f.Rule, StringComparer.Ordinal)], score.Points, score.PointsByRule);
    }

    /// <summary>The move of a routine that this one is; null while anything of it is open.</summary>
    private static Move? Settled(Book book, SketchMove move)
    {
        if (move.IsGap || move.Count is not { } count || count.First != count.Last || (!move.FollowsUp && move.Attack is null && !IsAlone(book, move)) || (!move.IsSuffered && move.Technique is null))
        {
            return null;
        }

        var attacks = Meant(move.Attack).Select(book.Attack).ToList();
        var techniques = Meant(move.Technique).Select(book.Technique).ToList();
        if (attacks.Count > 1 || techniques.Count > 1)
        {
            // The side at which the two meet, where only one does.
            var fitting = techniques.SelectMany(t => attacks.Where(a => t.Answers.Contains(a.Line)).Select(a => (t, a))).ToList();
            attacks = attacks.Count > 1 ? [.. fitting.Select(f => f.a).Distinct()] : attacks;
            techniques = techniques.Count > 1 ? [.. fitting.Select(f => f.t).Distinct()] : techniques;
        }

        var technique = techniques is [var only] ? only : null;
        if (attacks.Count > 1 || techniques.Count > 1 || (move.Technique is not null && technique is null) || (move.Attack is not null && attacks.Count == 0) || move.Technique?.Foot is not null
            || (technique is { Travel: not null } && move.To is null) || (move.Attacker is null && !(technique is { HasNoTarget: true } && attacks.Count == 0)))
        {
            return null;
        }

        // What the words mean where nothing is done, or to nobody, is said of nobody in a routine.
        var isToNobody = technique is { HasNoTarget: true } && attacks.Count == 0;
        var reaction = technique is null ? null : move.Reaction is { } said ? said.Ids is [var one] ? one : null : technique is { Reactions: [var alone] } ? alone : null;
        return reaction is null && technique is { Reactions.Count: > 0 } ? null : new Move
        {
            Start = count.First,
            ByAlly = move.ByAlly,
            Attacker = isToNobody ? null : move.Attacker,
            From = isToNobody ? null : move.From,
            Cue = move.Cue,
            Attack = attacks.FirstOrDefault()?.Id,
            Technique = technique?.Id,
            Reaction = reaction,
            Hurts = technique is null or { HasNoTarget: true, Family: not Family.Setback } ? null : move.Hurts,
            To = technique is { Travel: not null } ? move.To : null,
            Stance = move.Stance,
            Linger = move.Linger,
            Note = move.Note,
        };
    }

    /// <summary>Columns that are empty because there is nothing to say in them: of nobody for what is done alone, of no reaction where none is sold.</summary>
    public static IEnumerable<Column> Needless(Book book, SketchMove move)
    {
        if (IsAlone(book, move))
        {
            yield return Column.Attacker;
            yield return Column.Attack;
        }

        if (move is { IsGap: false, Reaction: null } && (move.IsSuffered || Are(book, move, t => t.Reactions.Count == 0)))
        {
            yield return Column.Reaction;
        }
    }

    /// <summary>Only what is done to nobody is written, and no attack can be met with that: nobody else has anything to do with the move.</summary>
    private static bool IsAlone(Book book, SketchMove move) => move is { IsGap: false, Attacker: null, Attack: null } && Are(book, move, t => t.HasNoTarget && t.Answers.IsEmpty);

    private static bool Are(Book book, SketchMove move, Predicate<Technique> so) => Meant(move.Technique) is { Count: > 0 } ids && ids.All(id => so(book.Technique(id)));

    private static IReadOnlyList<string> Meant(SketchCell? cell) => cell?.Ids ?? [];
}

using System.Globalization;
using Generator.Domain;
using Generator.Library.Reading;
using Generator.Rules;
using Generator.Solver.Completing;

namespace Generator.Solver.Diagnosing;

/// <summary>
/// The changes from a routine to its mended form, one after another: first what is changed throughout and leaves who does what as it was written (opening places, cues, time, places, spans until they come back, sides and reactions), each kind
/// at once, then move by move what is done.
/// </summary>
/// <param name="scene">Brief and library.</param>
/// <param name="old">The routine as it was written.</param>
/// <param name="mended">The same as a sketch, filled in.</param>
internal sealed class Mending(Scene scene, Routine old, Completed mended)
{
    private readonly IReadOnlyList<Move> moves = mended.Routine.Moves;
    private IReadOnlyList<Placement> placements = old.Placements;
    private Move[] now = [.. old.Moves];
    private int done;

    /// <summary>All changes in order; the last leaves the mended routine.</summary>
    public IEnumerable<Change> Changes()
    {
        if (!old.Placements.SequenceEqual(mended.Routine.Placements))
        {
            placements = mended.Routine.Placements;
            yield return Made("other opening places: " + Listed(old.Placements.Index().Where(p => p.Item != placements[p.Index]).Select(p => $"{scene.Brief.Attackers[p.Index].Name} {placements[p.Index].ToText()}")));
        }

        foreach (var (kind, to) in Throughout())
        {
            var told = new List<string>();
            for (var i = 0; i < now.Length; i++)
            {
                if (mended.Rows[i] is >= 0 and var row && to(now[i], moves[row]) is var (changed, words))
                {
                    now[i] = changed;
                    told.AddRange(words.Length == 0 ? [] : [$"move {Number(i + 1)} ({words})"]);
                }
            }

            if (told.Count > 0)
            {
                yield return Made($"{kind}: {string.Join(", ", told)}");
            }
        }

        for (var i = 0; i < now.Length; i++)
        {
            if (Become(i) is { } told)
            {
                done = i + 1;
                yield return Made(told);
            }
        }

        done = now.Length + 1;
        if (PutIn(now.Length).Select(Named).ToList() is { Count: > 0 } last)
        {
            yield return Made("put in at the end: " + Listed(last));
        }
    }

    /// <summary>Kinds of change that leave who does what: their names, and each move with what the mended form has of it and that in words, none where it is the same.</summary>
    private IEnumerable<(string Kind, Func<Move, Move, (Move, string)> To)> Throughout()
    {
        yield return ("a cue", (move, to) => move.Attack is null || to.Attack is null || move.Cue == to.Cue ? (move, string.Empty) : (move with { Cue = to.Cue }, EnumWords.Of(to.Cue)));
        var later = 0;
        yield return ("other time before", Timed);
        yield return ("another place", (move, to) => move.Attacker != to.Attacker || move.From == to.From ? (move, string.Empty)
            : (move with { From = to.From }, to.From?.InWords ?? "where they were left"));
        yield return ("coming back later after", (move, to) => move.Linger == to.Linger ? (move, string.Empty) : (move with { Linger = to.Linger }, to.Linger.InWords));
        yield return ("the other side", (move, to) => Same(move, to) || !SameButSide(move, to) ? (move, string.Empty)
            : (move with { Attack = to.Attack, Technique = to.Technique, Reaction = to.Reaction, Stance = null }, What(to)));
        yield return ("another reaction", (move, to) => Same(move, to) || !Same(move with { Reaction = to.Reaction }, to) ? (move, string.Empty)
            : (move with { Reaction = to.Reaction, Stance = null }, to.Reaction is { } reaction ? scene.Book.Reaction(reaction).Name : "none"));

        (Move, string) Timed(Move move, Move to)
        {
            var more = to.Start.Value - move.Start.Value - later;
            later += more;
            return (move with { Start = to.Start }, more == 0 ? string.Empty : $"{new HalfCounts(Math.Abs(more)).InWords} {(more > 0 ? "more" : "less")}");
        }
    }

    /// <summary>What a move becomes and what is put in before it, in words; null where it stays.</summary>
    private string? Become(int index)
    {
        var row = mended.Rows[index];
        var putIn = PutIn(index).Select(Named).ToList();
        string?[] told =
        [
            putIn.Count > 0 ? $"put in before move {Number(index + 1)}: {Listed(putIn)}" : null,
            row < 0 ? $"move {Number(index + 1)} left out" : Same(now[index], moves[row]) ? null : $"move {Number(index + 1)} as {Named(moves[row])}",
        ];
        return string.Join("; ", told.OfType<string>()) is { Length: > 0 } text ? text : null;
    }

    /// <summary>What is put in before a move, or at the end after the last; what stands before one that is left out is put in before the next.</summary>
    private IEnumerable<Move> PutIn(int index)
    {
        var from = mended.Rows.Take(index).Max(r => (int?)r) + 1 ?? 0;
        var to = index == now.Length ? moves.Count : mended.Rows[index];
        return moves.Skip(from).Take(to - from);
    }

    private Change Made(string told)
    {
        var made = new List<(Move Move, int Written)>();
        for (var i = 0; i <= now.Length; i++)
        {
            made.AddRange(i < done ? PutIn(i).Select(m => (m, 0)) : []);
            if (i < now.Length && (i >= done || mended.Rows[i] >= 0))
            {
                made.Add((i < done ? moves[mended.Rows[i]] : now[i], i + 1));
            }
        }

        return new Change(told, old with { Placements = placements, Moves = [.. made.Select(m => m.Move)] }, [.. made.Select(m => m.Written)]);
    }

    private static bool Same(Move one, Move other) =>
        (one.Attacker, one.Attack, one.Technique, one.Reaction) == (other.Attacker, other.Attack, other.Technique, other.Reaction);

    private bool SameButSide(Move one, Move other) =>
        one.Attacker == other.Attacker && (one.Attack, one.Technique) != (other.Attack, other.Technique) && Bases(one) == Bases(other);

    private (string?, string?) Bases(Move move) =>
        (move.Attack is { } a ? scene.Book.Attack(a).BaseId : null, move.Technique is { } t ? scene.Book.Technique(t).BaseId : null);

    /// <summary>"Bruno: jab left, slip right, falls short".</summary>
    private string Named(Move move) => move.Attacker is { } who ? $"{scene.Brief.Attackers[who].Name}: {What(move)}" : What(move);

    private string What(Move move)
    {
        var book = scene.Book;
        string?[] parts = [move.Attack is { } a ? book.Attack(a).Name : null, move.Technique is { } t ? book.Technique(t).Name : null, move.Reaction is { } r ? book.Reaction(r).Name : null];
        return string.Join(", ", parts.OfType<string>());
    }

    private static string Listed(IEnumerable<string> told) => string.Join("; ", told);

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}

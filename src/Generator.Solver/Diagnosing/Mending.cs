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
            yield return Made("other opening places: " + Listed(old.Placements.Index().Where(p => p.Item != placements[p.Index]).Select(p => Opening(p.Index))));
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
        if (moves.Count > Before(now.Length))
        {
            yield return Made("put in at the end: " + Listed(moves.Skip(Before(now.Length)).Select(Named)));
        }
    }

    /// <summary>Kinds of change that leave who does what: their names, and each move with what the mended form has of it and that in words, none where it is the same.</summary>
    private IEnumerable<(string Kind, Func<Move, Move, (Move, string)> To)> Throughout()
    {
        yield return ("a cue", (move, to) => move.Attack is null || to.Attack is null || move.Cue == to.Cue ? (move, string.Empty) : (move with { Cue = to.Cue }, EnumWords.Of(to.Cue)));
        var later = 0;
        yield return ("other time before", (move, to) =>
        {
            var more = to.Start.Value - move.Start.Value - later;
            later += more;
            return (move with { Start = to.Start }, more == 0 ? string.Empty : $"{new HalfCounts(Math.Abs(more)).InWords} {(more > 0 ? "more" : "less")}");
        }
        );
        yield return ("another place", (move, to) => move.Attacker != to.Attacker || move.From == to.From ? (move, string.Empty)
            : (move with { From = to.From }, to.From?.InWords ?? "where they were left"));
        yield return ("coming back later after", (move, to) => move.Linger == to.Linger ? (move, string.Empty) : (move with { Linger = to.Linger }, to.Linger.InWords));
        yield return ("the other side", (move, to) => Same(move, to) || !SameButSide(move, to) ? (move, string.Empty)
            : (move with { Attack = to.Attack, Technique = to.Technique, Reaction = to.Reaction, Stance = null }, What(to)));
        yield return ("another reaction", (move, to) => Same(move, to) || !Same(move with { Reaction = to.Reaction }, to) ? (move, string.Empty)
            : (move with { Reaction = to.Reaction, Stance = null }, to.Reaction is { } reaction ? scene.Book.Reaction(reaction).Name : "none"));
    }

    /// <summary>What a move becomes and what is put in before it, in words; null where it stays.</summary>
    private string? Become(int index)
    {
        var row = mended.Rows[index];
        var putIn = moves.Skip(Before(index)).Take((row < 0 ? Before(index) : row) - Before(index)).Select(Named).ToList();
        string?[] told =
        [
            putIn.Count > 0 ? $"put in before move {Number(index + 1)}: {Listed(putIn)}" : null,
            row < 0 ? $"move {Number(index + 1)} left out" : Same(now[index], moves[row]) ? null : $"move {Number(index + 1)} as {Named(moves[row])}",
        ];
        return string.Join("; ", told.OfType<string>()) is { Length: > 0 } text ? text : null;
    }

    /// <summary>The row after the last move before this one that stays, from 0.</summary>
    private int Before(int index) => mended.Rows.Take(index).Aggregate(0, (next, row) => row < 0 ? next : row + 1);

    private Change Made(string told)
    {
        var (made, written) = (new List<Move>(), new List<int>());
        for (var i = 0; i < now.Length; i++)
        {
            var row = mended.Rows[i];
            if (i >= done)
            {
                made.Add(now[i]);
                written.Add(i + 1);
                continue;
            }

            for (var r = Before(i); r < row; r++)
            {
                made.Add(moves[r]);
                written.Add(0);
            }

            if (row >= 0)
            {
                made.Add(moves[row]);
                written.Add(i + 1);
            }
        }

        if (done > now.Length)
        {
            made.AddRange(moves.Skip(Before(now.Length)));
            written.AddRange(Enumerable.Repeat(0, made.Count - written.Count));
        }

        return new Change(told, old with { Placements = placements, Moves = made }, written);
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

    private string Opening(int attacker)
    {
        var (name, place) = (scene.Brief.Attackers[attacker].Name, placements[attacker]);
        return place.Entrance > HalfCounts.Zero ? $"{name} {place.Bearing.InWords}, {place.Distance}, in at count {place.Entrance.ToCountText()}" : $"{name} {place.Bearing.InWords}, {place.Distance}";
    }

    private static string Listed(IEnumerable<string> told) => string.Join("; ", told);

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}

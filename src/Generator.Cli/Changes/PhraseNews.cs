using System.Globalization;
using Generator.Domain;
using Generator.Paperwork.Teaching;
using Generator.Paperwork.Text;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Solver.Reworking;
using Generator.Solver.Revising;

namespace Generator.Cli.Changes;

/// <summary>What became of one phrase of the teaching plan of a routine as it was taught; phrase and moves are numbered as that plan numbers them.</summary>
/// <param name="Phrase">The phrase as taught.</param>
/// <param name="News">What is different in it, part by part; empty when rehearsal can skip it.</param>
/// <param name="Now">Number in the new routine of its first move, from 1; 0 when that does not stay.</param>
/// <param name="Shift">Half counts by which its first move comes later.</param>
internal sealed record PhraseNews(Phrase Phrase, IReadOnlyList<string> News, int Now, int Shift)
{
    private const int Nowhere = -1;

    private const int Unknown = int.MinValue;

    public bool IsUnchanged => News.Count == 0;

    /// <summary>Every phrase in order.</summary>
    /// <param name="book">The brief of the taught routine and the library.</param>
    /// <param name="taught">The routine as taught.</param>
    /// <param name="revised">The revision.</param>
    /// <param name="taken">Positions in the taught routine of the moves that were taken over.</param>
    /// <param name="marks">What marks that have moved make different.</param>
    public static IReadOnlyList<PhraseNews> Of(Scene book, Routine taught, Reworked revised, IReadOnlyList<int> taken, MarkNews marks)
    {
        var walked = marks.Ways.Select(w => w.Taught + 1).ToHashSet();
        var fates = new MoveChange?[taught.Moves.Count];
        var added = new int[taught.Moves.Count + 1];
        var last = 0;
        foreach (var change in revised.Change.Moves)
        {
            if (change.Old < 0)
            {
                added[last]++;
                continue;
            }

            fates[taken[change.Old]] = change;
            last = taken[change.Old] + 1;
        }

        var phrases = PhraseCut.Of(Replay.Of(book, taught));
        return [.. phrases.Select(p => One(p, p.Number == phrases.Count, revised, fates, added, walked))];
    }

    /// <summary>"phrase 2, moves 6 to 10: unchanged, 2 counts later, now moves 8 to 12".</summary>
    public string ToText() => $"phrase {Words.Number(Phrase.Number)}, moves {Words.Number(Phrase.First)} to {Words.Number(Phrase.Last)}: {(IsUnchanged ? "unchanged" + Moved() : string.Join(", ", News))}";

    private static PhraseNews One(Phrase phrase, bool isLast, Reworked revised, MoveChange?[] fates, int[] added, HashSet<int> walked)
    {
        var moves = Enumerable.Range(phrase.First, phrase.Moves).ToList();
        MoveChange? Fate(int move) => fates[move - 1] is { Kind: not ChangeKind.Dropped } fate ? fate : null;
        int ShiftOf(int move) => Fate(move) is { Kind: <= ChangeKind.Shifted } fate ? Shifted(revised, fate) : Unknown;
        var gone = moves.Where(m => Fate(m) is null).ToList();
        var changed = moves.Where(m => Fate(m) is { Kind: ChangeKind.Changed }).ToList();
        var otherwise = moves.Where(m => Fate(m) is { Kind: ChangeKind.Shifted } fate && IsOtherwise(revised, fate)).ToList();
        var apart = moves.Skip(1).Where(m => ShiftOf(m) != Unknown && ShiftOf(m - 1) != Unknown && ShiftOf(m) != ShiftOf(m - 1)).ToList();
        IReadOnlyList<string?> news =
        [
            Told(changed, "changes", "change"),
            Told(gone, "goes", "go"),
            Told(apart, "comes sooner or later after the move before", "come sooner or later after the move before"),
            Told(otherwise, "has another cue, bearing or linger", "have another cue, bearing or linger"),
            Told([.. moves.Where(walked.Contains)], "has another way on the floor", "have another way on the floor"),
            .. moves.Prepend(phrase.Number == 1 ? 0 : Nowhere).Where(m => m >= 0 && added[m] > 0 && (m < phrase.Last || isLast)).Select(m => m == 0
                ? $"{Words.Many(added[m], "new move")} before it"
                : $"{Words.Many(added[m], "new move")} after {Words.Number(m)}"),
        ];
        return new PhraseNews(phrase, [.. news.OfType<string>()], Fate(phrase.First) is { } first ? first.Now + 1 : 0, ShiftOf(phrase.First) is var shift && shift == Unknown ? 0 : shift);
    }

    private static int Shifted(Reworked revised, MoveChange change) => revised.Routine.Moves[change.Now].Start.Value - revised.Old.Moves[change.Old].Start.Value;

    private static bool IsOtherwise(Reworked revised, MoveChange change)
    {
        var (was, now) = (revised.Old.Moves[change.Old], revised.Routine.Moves[change.Now]);
        return was.Cue != now.Cue || was.From != now.From || was.Linger != now.Linger || was.Hurts != now.Hurts;
    }

    private static string? Told(IReadOnlyList<int> moves, string one, string many) => moves switch
    {
        [] => null,
        [var move] => $"{move.ToString(CultureInfo.InvariantCulture)} {one}",
        _ => $"{string.Join(", ", moves.SkipLast(1))} and {moves[^1]} {many}",
    };

    private string Moved()
    {
        var shift = Shift == 0 ? string.Empty : $", {Words.Span(new HalfCounts(Math.Abs(Shift)))} {(Shift > 0 ? "later" : "sooner")}";
        return Now == Phrase.First ? shift : $"{shift}, now moves {Words.Number(Now)} to {Words.Number(Now + Phrase.Moves - 1)}";
    }
}

using Generator.Library.Words;

namespace Generator.Library.Files.Notes;

/// <summary>
/// What commas before the arrow part: several attacks one behind the other ("jab, cross > parry, duck"), or one attack of which more is said ("shove, both hands > …", "gets up, wide swing > …").
/// </summary>
internal sealed class AttackList(MeaningFinder finder)
{
    private static readonly List<NotesPart> Open = [new(string.Empty, int.MaxValue)];

    /// <summary>One piece for each attack, in order; the words as they are where they are one attack.</summary>
    /// <param name="words">What stands before the arrow.</param>
    public IReadOnlyList<NotesPart> Of(NotesPart words)
    {
        var listed = words.Listed().Where(p => !p.IsEmpty).ToList();
        if (listed.Count < 2)
        {
            return [words];
        }

        var begins = listed.FindAll(p => finder.IsAttack(p.Text));
        return begins.Count < 2 || !finder.Attack(words.Text).IsGuess
            ? [One(words, listed, begins)]
            : [.. begins.Select((b, i) => NotesPart.Of(words.Text, words.Column, i == 0 ? 0 : b.Column - words.Column, i + 1 < begins.Count ? LastComma(words, begins[i + 1].Column) : words.Text.Length))];
    }

    /// <summary>What the hero does about one of several attacks, one cell a move: one about each, and the rest about the last; where less is said than there are attacks, the last ones are answered.</summary>
    public static List<NotesPart> Share(NotesPart right, int attack, int attacks)
    {
        List<NotesPart> listed = [.. right.Listed()];
        var at = attack - Math.Max(0, attacks - listed.Count);
        return at < 0 ? Open : attack < attacks - 1 ? [listed[at]] : listed[at..];
    }

    /// <summary>Nothing is said of what the hero does about this one of several attacks.</summary>
    public static bool IsOpen(List<NotesPart> share) => ReferenceEquals(share, Open);

    /// <summary>Column of the cell behind one; what comes behind the last belongs to it.</summary>
    public static int NextColumn(NotesPart right, NotesPart cell) => right.Listed().Select(c => c.Column).Where(c => c > cell.Column).Append(int.MaxValue).First();

    /// <summary>All of the words where they speak of what one of the pieces names; else that piece, which is more than nothing.</summary>
    private NotesPart One(NotesPart words, List<NotesPart> listed, List<NotesPart> begins)
    {
        var named = begins.Concat(listed.Where(p => finder.Attack(p.Text).Ids.Count > 0)).FirstOrDefault(words);
        return finder.Attack(words.Text).Ids.Intersect(finder.Attack(named.Text).Ids, StringComparer.Ordinal).Any() ? words : named;
    }

    private static int LastComma(NotesPart words, int column) => words.Text.AsSpan(0, column - words.Column).LastIndexOfAny(',', ';') is >= 0 and var comma ? comma : column - words.Column;
}

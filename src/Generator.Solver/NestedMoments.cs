using Generator.Domain;
using Generator.Library;

namespace Generator.Solver;

/// <summary>
/// Hero moments that happen whenever a longer one does, such as one inside a run of moves that is to be kept: they are asked for once, as a part of the other.
/// </summary>
internal static class NestedMoments
{
    /// <summary>Half counts in which one move follows another at the latest, pauses included: common practice, no source.</summary>
    private const int LongestMove = 24;

    /// <summary>For each moment of a brief the number of one that holds it; −1 for one that stands by itself.</summary>
    public static int[] Of(Brief brief, Book book)
    {
        var moments = brief.Moments;
        return [.. Enumerable.Range(0, moments.Count).Select(m => Enumerable.Range(0, moments.Count).Where(k => k != m && Holds(k, m)).FirstOrDefault(-1))];

        bool Holds(int outer, int inner) => Has(moments[outer], moments[inner], book)
            && (outer < inner || moments[outer].Moves.Count > moments[inner].Moves.Count || !Has(moments[inner], moments[outer], book));
    }

    /// <summary>
    /// For each move of a moment the others that begin with it, each with the half counts within which it may: a run that is kept may come a little sooner or later
    /// behind its first move, and what it holds would then have to come a second time. Nothing where another may begin with several moves.
    /// </summary>
    public static IReadOnlyList<IReadOnlyList<NestedWindow>> Windows(Brief brief, int outer, IReadOnlyList<int> within, Book book)
    {
        var moments = brief.Moments;
        var windows = moments[outer].Moves.Select(_ => new List<NestedWindow>()).ToList();
        for (var inner = 0; inner < moments.Count; inner++)
        {
            if (inner != outer && within[inner] >= 0 && within[outer] != inner && Starts(moments[outer], moments[inner], book).ToList() is [var at])
            {
                windows[at].Add(new NestedWindow(inner, moments[inner].Earliest?.Value ?? 0, moments[inner].Latest?.Value ?? int.MaxValue));
            }
        }

        return windows;
    }

    private static bool Has(Moment outer, Moment inner, Book book) => Starts(outer, inner, book).Any();

    /// <summary>Moves of the one, from 0, with which the other may begin.</summary>
    private static IEnumerable<int> Starts(Moment outer, Moment inner, Book book) =>
        Enumerable.Range(0, Math.Max(0, outer.Moves.Count - inner.Moves.Count + 1)).Where(from => AreInTime(outer, inner, from) && inner.Moves.Select((move, i) => IsAlso(outer.Moves[from + i], move, book)).All(also => also));

    /// <summary>Some of the counts at which such a move of the outer one may come are counts at which the inner one may begin.</summary>
    private static bool AreInTime(Moment outer, Moment inner, int at) =>
        !(inner.Latest?.Value < outer.Earliest?.Value + at) && !(inner.Earliest?.Value > outer.Latest?.Value + (at * LongestMove));

    /// <summary>Whatever fulfils the one fulfils the other.</summary>
    private static bool IsAlso(MomentMove one, MomentMove other, Book book) =>
        book.Techniques.Where(t => t.GoesBy(one.Technique)).All(t => t.GoesBy(other.Technique))
        && (other.Attacker is null || string.Equals(one.Attacker, other.Attacker, StringComparison.Ordinal))
        && (other.Reaction is null || string.Equals(one.Reaction, other.Reaction, StringComparison.Ordinal))
        && (other.Attack is null || string.Equals(one.Attack, other.Attack, StringComparison.Ordinal)
            || (one.Attack is { } attack && !one.WantsNoAttack && !other.WantsNoAttack && book.Attacks.Where(a => a.GoesBy(attack)).All(a => a.GoesBy(other.Attack))));
}

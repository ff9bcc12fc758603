using Generator.Domain;
using Generator.Library;

namespace Generator.Solver;

/// <summary>
/// Hero moments that happen whenever a longer one does, such as one inside a run of moves that is to be kept: they are asked for once, as a part of the other.
/// </summary>
internal static class NestedMoments
{
    /// <summary>For each moment of a brief the number of one that holds it; −1 for one that stands by itself.</summary>
    public static int[] Of(Brief brief, Book book)
    {
        var moments = brief.Moments;
        return [.. Enumerable.Range(0, moments.Count).Select(m => Enumerable.Range(0, moments.Count).Where(k => k != m && Holds(k, m)).FirstOrDefault(-1))];

        bool Holds(int outer, int inner) => Has(moments[outer], moments[inner], book)
            && (outer < inner || moments[outer].Moves.Count > moments[inner].Moves.Count || !Has(moments[inner], moments[outer], book));
    }

    private static bool Has(Moment outer, Moment inner, Book book) =>
        !(inner.Latest < outer.Earliest)
        && Enumerable.Range(0, Math.Max(0, outer.Moves.Count - inner.Moves.Count + 1)).Any(from => inner.Moves.Select((move, i) => IsAlso(outer.Moves[from + i], move, book)).All(also => also));

    /// <summary>Whatever fulfils the one fulfils the other.</summary>
    private static bool IsAlso(MomentMove one, MomentMove other, Book book) =>
        book.Techniques.Where(t => t.GoesBy(one.Technique)).All(t => t.GoesBy(other.Technique))
        && (other.Attacker is null || string.Equals(one.Attacker, other.Attacker, StringComparison.Ordinal))
        && (other.Reaction is null || string.Equals(one.Reaction, other.Reaction, StringComparison.Ordinal))
        && (other.Attack is null || string.Equals(one.Attack, other.Attack, StringComparison.Ordinal)
            || (one.Attack is { } attack && !one.WantsNoAttack && !other.WantsNoAttack && book.Attacks.Where(a => a.GoesBy(attack)).All(a => a.GoesBy(other.Attack))));
}

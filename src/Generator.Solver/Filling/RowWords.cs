using Generator.Domain;
using Generator.Rules;

namespace Generator.Solver.Filling;

/// <summary>What one row of a move model may be, one flag for each position of the vocabulary: the tables of a row of which much is said hold little else.</summary>
/// <param name="Uses">Uses of techniques.</param>
/// <param name="Attacks">Attacks that one of them may carry.</param>
/// <param name="Reactions">Reactions that one of them may have.</param>
public sealed record RowWords(IReadOnlyList<bool> Uses, IReadOnlyList<bool> Attacks, IReadOnlyList<bool> Reactions)
{
    /// <summary>The uses that fit, with the attacks and reactions that fit and go with one of them.</summary>
    public static RowWords Of(Scene scene, Vocabulary vocabulary, Func<Use, bool> use, Func<Attack, bool> attack, Func<Reaction, bool> reaction)
    {
        var book = scene.Book;
        var thrown = Enumerable.Range(0, book.Attacks.Count).Where(k => attack(book.Attacks[k])).ToHashSet();
        bool[] uses = [.. vocabulary.Uses.Select(u => use(u) && (!u.CarriesAttack || u.Attacks.Any(thrown.Contains)))];
        var left = vocabulary.Uses.Where((_, n) => uses[n]).ToList();
        var (carried, sold) = (left.SelectMany(u => u.Attacks).ToHashSet(), left.SelectMany(u => u.Technique?.Reactions ?? []).ToHashSet(StringComparer.Ordinal));
        return new RowWords(
            uses,
            [.. vocabulary.Attacks.Select(k => carried.Contains(k) && thrown.Contains(k))],
            [.. vocabulary.Reactions.Select(r => sold.Contains(book.Reactions[r].Id) && reaction(book.Reactions[r]))]);
    }
}

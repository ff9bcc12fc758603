namespace Generator.Library.Reading;

/// <summary>Finds the words that a mistyped one may have been meant to be.</summary>
public static class NearestWords
{
    /// <summary>Ranks from here on are for shared words, below it are edit distances.</summary>
    private const int SharedWord = 1000;

    /// <summary>
    /// The nearest of <paramref name="known"/>: first those within an edit distance of a third of the word (at least 1), nearest first,
    /// then those that share a whole word with it ("kick" finds "side kick"), unless <paramref name="typosOnly"/>. Ties go by name.
    /// </summary>
    public static IReadOnlyList<string> Of(string word, IEnumerable<string> known, int most = 3, bool typosOnly = false)
    {
        var wanted = Plain(word);
        var cap = Math.Max(1, wanted.Length / 3);
        var parts = wanted.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return [.. known.Distinct(StringComparer.Ordinal)
            .Select(k => (Word: k, Rank: Rank(wanted, parts, Plain(k), cap)))
            .Where(p => p.Rank < (typosOnly ? SharedWord : int.MaxValue))
            .OrderBy(p => p.Rank).ThenBy(p => p.Word, StringComparer.Ordinal)
            .Take(most).Select(p => p.Word)];
    }

    /// <summary>
    /// The fewest letters to put in, take out, change, or swap with their neighbour to make one word of the other (each letter is touched once).
    /// </summary>
    public static int Distance(string from, string to)
    {
        int[] twoBack = [], back = [.. Enumerable.Range(0, to.Length + 1)];
        for (var i = 1; i <= from.Length; i++)
        {
            var row = new int[to.Length + 1];
            row[0] = i;
            for (var j = 1; j <= to.Length; j++)
            {
                var change = back[j - 1] + (from[i - 1] == to[j - 1] ? 0 : 1);
                row[j] = Math.Min(change, Math.Min(back[j], row[j - 1]) + 1);
                if (i > 1 && j > 1 && from[i - 1] == to[j - 2] && from[i - 2] == to[j - 1])
                {
                    row[j] = Math.Min(row[j], twoBack[j - 2] + 1);
                }
            }

            (twoBack, back) = (back, row);
        }

        return back[to.Length];
    }

    /// <summary>The sentence for a problem: "Maybe … is meant.", near misses before words that share a part; or, when nothing is near, <paramref name="otherwise"/>.</summary>
    public static string Maybe(string word, IEnumerable<string> known, string otherwise)
    {
        IReadOnlyList<string> words = [.. known];
        var typos = Of(word, words, typosOnly: true);
        var near = typos.Count > 0 ? typos : Of(word, words);
        return near.Count == 0 ? otherwise : OneOf(near);
    }

    /// <summary>"Maybe … is meant." for one word, "Maybe one of these is meant: …" for more.</summary>
    public static string OneOf(IEnumerable<string> words)
    {
        IReadOnlyList<string> all = [.. words];
        return all.Count == 1 ? $"Maybe {all[0]} is meant." : $"Maybe one of these is meant: {string.Join(", ", all)}.";
    }

    private static int Rank(string wanted, string[] parts, string known, int cap)
    {
        var distance = Distance(wanted, known);
        if (distance <= cap)
        {
            return distance;
        }

        var shared = known.Split(' ').Intersect(parts, StringComparer.Ordinal).Sum(p => p.Length);
        return shared >= 3 ? (2 * SharedWord) - shared : int.MaxValue;
    }

    private static string Plain(string word) =>
        string.Concat(word.Trim().Select(c => c is '-' or '_' ? ' ' : char.ToLowerInvariant(c)));
}

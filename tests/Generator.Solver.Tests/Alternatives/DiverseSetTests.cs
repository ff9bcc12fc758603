using FsCheck.Xunit;
using Generator.Solver.Alternatives;

namespace Generator.Solver.Tests.Alternatives;

public class DiverseSetTests
{
    /// <summary>
    /// The words of length 7 of the automaton in the XCSP specification of the constraint regular, by Hamming distance; Hebrard, Hnich, O'Sullivan
    /// and Walsh 2005 pose the question of the most diverse among the answers of a constraint problem.
    /// </summary>
    [Fact]
    public void The_most_diverse_words_of_a_published_automaton()
    {
        var words = Words("a", string.Empty).Order(StringComparer.Ordinal).ToList();
        Assert.Equal(10, words.Count);
        int Distance(int i, int j) => words[i].Zip(words[j]).Count(p => p.First != p.Second);
        var pair = DiverseSet.Pick(words.Count, 2, Distance, DiversityGoal.Smallest);
        Assert.Equal(6, Distance(pair[0], pair[1]));
        Assert.Equal(14, Sum(DiverseSet.Pick(words.Count, 3, Distance, DiversityGoal.Sum), Distance));
        Assert.Equal(4, Smallest(DiverseSet.Pick(words.Count, 3, Distance, DiversityGoal.Smallest), Distance));
    }

    [Property(MaxTest = 60)]
    public bool It_is_the_best_of_all_sets(int seed)
    {
        var dice = new Random(seed);
        var table = new int[7, 7];
        for (var i = 0; i < 7; i++)
        {
            for (var j = 0; j < i; j++)
            {
                table[i, j] = table[j, i] = dice.Next(5);
            }
        }

        int Distance(int i, int j) => table[i, j];
        var sets = Enumerable.Range(0, 1 << 7).Where(b => int.PopCount(b) == 3).Select(b => Enumerable.Range(0, 7).Where(i => (b & (1 << i)) != 0).ToList()).ToList();
        var (nearest, farthest) = (DiverseSet.Pick(7, 3, Distance, DiversityGoal.Smallest), DiverseSet.Pick(7, 3, Distance, DiversityGoal.Sum));

        // Of sets that are as good by their goal the one that is better by the other.
        return sets.Max(s => (Smallest(s, Distance), Sum(s, Distance))).Equals((Smallest(nearest, Distance), Sum(nearest, Distance)))
            && sets.Max(s => (Sum(s, Distance), Smallest(s, Distance))).Equals((Sum(farthest, Distance), Smallest(farthest, Distance)));
    }

    [Fact]
    public void Too_few_things_give_no_set() => Assert.Empty(DiverseSet.Pick(2, 3, (_, _) => 1, DiversityGoal.Sum));

    private static int Sum(IReadOnlyList<int> set, Func<int, int, int> distance) => set.Sum(i => set.Where(j => j > i).Sum(j => distance(i, j)));

    private static int Smallest(IReadOnlyList<int> set, Func<int, int, int> distance) => set.SelectMany(i => set.Where(j => j > i).Select(j => distance(i, j))).Min();

    /// <summary>a -0-> a, a -1-> b, b -1-> c, c -0-> d, d -0-> d, d -1-> e, e -0-> e; a word ends in e.</summary>
    private static IEnumerable<string> Words(string state, string word)
    {
        if (word.Length == 7)
        {
            return state == "e" ? [word] : [];
        }

        (string Next, char Letter)[] ways = state switch
        {
            "a" => [("a", '0'), ("b", '1')],
            "b" => [("c", '1')],
            "c" => [("d", '0')],
            "d" => [("d", '0'), ("e", '1')],
            _ => [("e", '0')],
        };
        return ways.SelectMany(w => Words(w.Next, word + w.Letter));
    }
}

using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Generator.Paperwork.Teaching;

namespace Generator.Paperwork.Tests.Teaching;

public class PhraseCutTests
{
    private static readonly int[] Lengths = [0, 1, 2, 3, 4, 5, 6, 7, 8, 13, 60, 500];

    [Fact]
    public void Phrases_cover_every_move_and_pick_up_from_the_last_one()
    {
        foreach (var moves in Lengths)
        {
            var phrases = PhraseCut.Of([.. Enumerable.Range(0, moves).Select(i => i * 7 % 5)]);
            Assert.Equal(moves > 0, phrases.Count > 0);
            Assert.Equal(Enumerable.Range(1, phrases.Count), phrases.Select(p => p.Number));
            Assert.All(phrases.Zip(phrases.Skip(1)), pair => Assert.Equal(pair.First.Last, pair.Second.First));
            if (moves > 0)
            {
                Assert.Equal((1, moves), (phrases[0].First, phrases[^1].Last));
            }

            Assert.All(phrases, p => Assert.InRange(p.Moves, Math.Min(moves, Phrase.Fewest), Phrase.Most));
        }
    }

    [Fact]
    public void The_cut_falls_at_the_stable_moment() =>
        Assert.Equal([new Phrase(1, 1, 4), new Phrase(2, 4, 9)], PhraseCut.Of([3, 3, 3, 0, 3, 3, 3, 3, 3]));

    [Fact]
    public void Equal_moments_give_phrases_of_about_five() =>
        Assert.Equal([new Phrase(1, 1, 5), new Phrase(2, 5, 9), new Phrase(3, 9, 13)], PhraseCut.Of(new int[13]));

    /// <summary>The naive twin tries every cutting there is.</summary>
    [Property(MaxTest = 300)]
    public Property No_other_cutting_carries_less_over() => Prop.ForAll(
        Arb.From(Gen.Choose(4, 16).SelectMany(n => Gen.ArrayOf(Gen.Choose(0, 6), n))),
        carry =>
        {
            var best = Cuttings(0, carry.Length).MinBy(c => (Carried(c, carry), Unevenness(c)));
            return best!.SequenceEqual(PhraseCut.Of(carry).Select(p => p.Last - 1)).Classify(Cuttings(0, carry.Length).Count() > 5, "more than five cuttings");
        });

    /// <summary>Every list of phrase ends, in the order of their first ends.</summary>
    private static IEnumerable<IReadOnlyList<int>> Cuttings(int from, int count)
    {
        if (from == count - 1)
        {
            return [[]];
        }

        return Enumerable.Range(from + 2, 5).Where(to => to < count).SelectMany(to => Cuttings(to, count).Select(rest => (IReadOnlyList<int>)[to, .. rest]));
    }

    private static int Carried(IReadOnlyList<int> ends, int[] carry) => ends.SkipLast(1).Sum(e => carry[e]);

    private static int Unevenness(IReadOnlyList<int> ends) => ends.Select((e, i) => (e - (i == 0 ? 0 : ends[i - 1]) - 4) is var d ? d * d : 0).Sum();
}

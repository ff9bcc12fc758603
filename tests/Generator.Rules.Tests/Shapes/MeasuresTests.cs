using FsCheck.Xunit;
using Generator.Rules.Shapes;

namespace Generator.Rules.Tests.Shapes;

/// <summary>Measures on lists of numbers: worked examples, and twins that do it the long way.</summary>
public sealed class MeasuresTests
{
    /// <summary>By the formula of Grabe and Low (2002), from memory: 1, 2, 4 gives (1/1.5 + 2/3) / 2 × 100; notes of one length give 0; long and short of 2 to 1 give 66.7 for ever.</summary>
    [Theory]
    [InlineData(66.67, 0, 1, 2, 4)]
    [InlineData(0, 3, 2, 2, 2, 2)]
    [InlineData(66.67, 0, 2, 1, 2, 1, 2)]
    [InlineData(100, 0, 1, 3)]
    public void Variability_of_neighbours(double npvi, int equal, params int[] lengths)
    {
        var intervals = new Intervals(lengths);
        Assert.Equal((decimal)npvi, decimal.Round(intervals.Npvi!.Value, 2));
        Assert.Equal(equal, intervals.EqualPairs);
    }

    [Fact]
    public void One_interval_has_no_neighbours() => Assert.Null(new Intervals([3]).Npvi);

    [Fact]
    public void Attackers_who_each_have_a_kind_share_a_bit_with_it()
    {
        var manners = Manners.Of([.. Enumerable.Range(0, 20).Select(i => (i % 2, i % 2))]);
        Assert.Equal((1.0, 20), (Math.Round(manners.Bits, 9), manners.Told));
        Assert.InRange(manners.Shuffled, 0, 0.2);
        Assert.True(manners.Score > 4);
    }

    [Fact]
    public void Attackers_who_do_the_same_share_nothing()
    {
        var manners = Manners.Of([.. Enumerable.Range(0, 20).Select(i => (i % 2, i / 2 % 2))]);
        Assert.Equal((0.0, 10), (Math.Round(manners.Bits, 9), manners.Told));
        Assert.True(manners.Score < 0);
        Assert.Equal(manners, Manners.Of([.. Enumerable.Range(0, 20).Select(i => (i % 2, i / 2 % 2))]));
    }

    [Property(MaxTest = 200)]
    public void Longest_run_of_one_length(byte[] lengths)
    {
        var exchanges = lengths.Select((l, i) => new Exchange(i + 1, (l % 3) + 1, 0, i)).ToList();
        var longest = 0;
        for (var from = 0; from < exchanges.Count; from++)
        {
            for (var to = from + 1; to <= exchanges.Count; to++)
            {
                longest = exchanges.Skip(from).Take(to - from).Select(e => e.Moves).Distinct().Count() == 1 ? Math.Max(longest, to - from) : longest;
            }
        }

        var (at, count) = Exchange.LongestAlike(exchanges);
        Assert.Equal(longest, count);
        Assert.True(count == 0 || exchanges.Skip(at).Take(count).Select(e => e.Moves).Distinct().Count() == 1);
    }

    /// <summary>A moment belongs to a flurry where some window of three moments round it has no gap above a count.</summary>
    [Property(MaxTest = 200)]
    public void Flurries_are_where_three_moments_are_close(byte[] gaps)
    {
        var times = gaps.Select(g => g % 6).Aggregate(new List<int> { 0 }, (all, g) => [.. all, all[^1] + g]);
        var contacts = times.Select(t => new Contact(t, 1, 0, true, true, 1)).ToList();
        var moments = times.Distinct().ToList();
        var close = moments.Where((_, i) => Enumerable.Range(i - 2, 3).Any(f => f >= 0 && f + 2 < moments.Count && moments[f + 1] - moments[f] <= 2 && moments[f + 2] - moments[f + 1] <= 2)).ToList();
        var flurries = Flurry.Of(contacts);
        Assert.Equal(close, moments.Where(m => flurries.Any(f => f.From <= m && m <= f.To)));
        Assert.Equal(close.Count, flurries.Sum(f => f.Contacts));
        Assert.All(flurries, f => Assert.Equal(moments.Where(m => m > f.To).Select(m => (int?)m - f.To).FirstOrDefault(), f.Rest));
    }

    [Property(MaxTest = 200)]
    public void The_longest_run_of_equal_gaps_is_one(byte[] gaps)
    {
        var times = gaps.Select(g => (g % 3) + 1).Aggregate(new List<int> { 0 }, (all, g) => [.. all, all[^1] + g]);
        var contacts = times.Select(t => new Contact(t, 1, 0, true, true, 1)).ToList();
        var lengths = Intervals.Of(contacts).Lengths;
        var naive = Enumerable.Range(0, lengths.Count).Select(i => lengths.Skip(i).TakeWhile(l => l == lengths[i]).Count()).Append(0).Max();
        Assert.Equal(naive, Intervals.LongestRun(contacts).Count);
    }
}

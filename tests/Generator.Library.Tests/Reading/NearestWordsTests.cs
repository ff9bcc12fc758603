using FsCheck.Xunit;
using Generator.Library.Reading;

namespace Generator.Library.Tests.Reading;

public class NearestWordsTests
{
    [Theory]
    [InlineData("", "", 0)]
    [InlineData("kick", "kick", 0)]
    [InlineData("kick", "kcik", 1)]
    [InlineData("kick", "lick", 1)]
    [InlineData("kick", "kicks", 1)]
    [InlineData("kick", "", 4)]
    [InlineData("ca", "abc", 3)]
    [InlineData("throw", "trhwo", 2)]
    public void Distance_counts_a_swap_once(string from, string to, int expected) =>
        Assert.Equal(expected, NearestWords.Distance(from, to));

    [Property(MaxTest = 300)]
    public bool Distance_is_the_same_both_ways_and_at_most_the_longer_word(string? one, string? two)
    {
        var (a, b) = (one ?? string.Empty, two ?? string.Empty);
        var distance = NearestWords.Distance(a, b);
        return distance == NearestWords.Distance(b, a)
            && distance <= Math.Max(a.Length, b.Length)
            && distance >= Math.Abs(a.Length - b.Length)
            && (distance == 0) == string.Equals(a, b, StringComparison.Ordinal);
    }

    [Fact]
    public void Ties_go_by_name() => Assert.Equal(["bat", "cat", "rat"], NearestWords.Of("xat", ["rat", "cat", "bat", "sat"]));

    [Fact]
    public void Farther_than_a_third_is_not_offered() => Assert.Empty(NearestWords.Of("throws", ["trips"]));

    [Fact]
    public void A_shared_whole_word_comes_after_near_ones() =>
        Assert.Equal(["pick", "front-kick", "side kick"], NearestWords.Of("kick", ["side kick", "front-kick", "pick", "kickback"]));

    [Fact]
    public void Case_and_hyphens_do_not_count() => Assert.Equal(["hip-throw"], NearestWords.Of("Hip Thorw", ["hip-throw", "arm-lock"]));
}

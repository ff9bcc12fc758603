using FsCheck.Xunit;

namespace Generator.Paperwork.Tests;

public class ExactSecondsTests
{
    [Theory]
    [InlineData(1, 2, 1)]
    [InlineData(-1, 2, 0)]
    [InlineData(3, 2, 2)]
    [InlineData(-3, 2, -1)]
    [InlineData(-2, 1, -2)]
    [InlineData(49, 100, 0)]
    [InlineData(-51, 100, -1)]
    public void The_nearest_whole_halves_up(long above, long below, long nearest) => Assert.Equal(nearest, new ExactSeconds(above, below).Nearest(1));

    [Property]
    public void The_nearest_is_never_farther_off_than_half(int above, ushort below, ushort rate)
    {
        var time = new ExactSeconds(above, below + 1);
        var nearest = time.Nearest(rate + 1);
        var off = Math.Abs(((decimal)above * (rate + 1) / (below + 1)) - nearest);
        Assert.True(off <= 0.5000001m, $"{off}");
    }

    [Fact]
    public void A_third_of_a_second_three_times_is_one_second()
    {
        var third = new ExactSeconds(1, 3);
        Assert.Equal(new ExactSeconds(2, 2), third + third + third);
        Assert.Equal("0.333", third.ToThousandths());
        Assert.Equal("0.7", new ExactSeconds(2, 3).ToTenths());
        Assert.Throws<ArgumentOutOfRangeException>(() => new ExactSeconds(1, 0));
    }
}

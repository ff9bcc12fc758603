namespace Generator.Domain.Tests;

/// <summary>Counts of passages, ramps and holds, worked by hand.</summary>
public sealed class PulseTests
{
    private static readonly Music Music = new()
    {
        Passages = [new(new(0), new(60), new(0)), new(new(8), new(100), new(4)), new(new(16), new(120), new(0))],
        Holds = [new(new(4), 1.5m, null), new(new(16), null, 3)],
    };

    private static readonly Pulse Pulse = new(new Tempo(120), Music);

    /// <summary>Over two counts from 60 to 100: the middles of its half counts lie at 1/8, 3/8, 5/8 and 7/8 of the way.</summary>
    [Theory]
    [InlineData(-8, 60)]
    [InlineData(7, 60)]
    [InlineData(8, 65)]
    [InlineData(9, 75)]
    [InlineData(10, 85)]
    [InlineData(11, 95)]
    [InlineData(12, 100)]
    [InlineData(15, 100)]
    [InlineData(16, 120)]
    [InlineData(99, 120)]
    public void A_ramp_goes_evenly_by_the_counts(int moment, int tempo) => Assert.Equal(new Tempo(tempo), Pulse.At(moment));

    [Fact]
    public void Seconds_are_those_of_each_half_count()
    {
        Assert.Equal(4m, Pulse.SecondsBetween(0, 8));
        Assert.Equal((30m / 65) + (30m / 75) + (30m / 85) + (30m / 95) + 0.3m, Pulse.SecondsBetween(8, 13));
        Assert.Equal(0.3m + 0.25m, Pulse.SecondsBetween(15, 17));
        Assert.Equal((new Tempo(60), new Tempo(120)), (Pulse.Slowest, Pulse.Fastest));
    }

    /// <summary>Three counts of music at 120 a minute last 1.5 s.</summary>
    [Theory]
    [InlineData(0, 4, 2)]
    [InlineData(0, 5, 4)]
    [InlineData(4, 5, 2)]
    [InlineData(5, 8, 1.5)]
    [InlineData(16, 18, 2)]
    public void A_held_count_lasts_longer(int from, int to, double seconds) => Assert.Equal((decimal)seconds, Pulse.SecondsWithHolds(from, to));

    [Fact]
    public void One_tempo_is_even() => Assert.True(((Pulse)new Tempo(97)) is { IsEven: true } even && even.At(40) == new Tempo(97) && even.SecondsWithHolds(2, 5) == 90m / 97);
}

using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Generator.Domain;
using Generator.Paperwork.Teaching;

namespace Generator.Paperwork.Tests.Teaching;

public class SpeedTests
{
    [Fact]
    public void The_ladder() => Assert.Equal(["quarter", "half", "three-quarter", "performance"], Speed.Ladder.Select(s => s.ToString()));

    [Property]
    public Property Durations_scale_exactly_and_add_up() => Prop.ForAll(
        Arb.From(Gen.Choose(0, 4000)),
        Arb.From(Gen.Choose(0, 4000)),
        Arb.From(Gen.Choose(Tempo.Slowest, Tempo.Fastest)),
        (first, second, counts) => Speed.Ladder.All(s =>
        {
            var tempo = new Tempo(counts);
            var (a, b, both) = (s.TimeOf(new HalfCounts(first), tempo), s.TimeOf(new HalfCounts(second), tempo), s.TimeOf(new HalfCounts(first + second), tempo));
            return a + b == both && both.Times(s.Quarters, 4) == ExactSeconds.Of(new HalfCounts(first + second), tempo);
        }).Classify(first > 0 && second > 0, "both last"));

    [Theory]
    [InlineData(100, "25", "50", "75", "100")]
    [InlineData(90, "22.5", "45", "67.5", "90")]
    [InlineData(111, "27.75", "55.5", "83.25", "111")]
    public void The_metronome(int tempo, params string[] marks) => Assert.Equal(marks, Speed.Ladder.Select(s => s.MetronomeOf(new Tempo(tempo))));
}

using Generator.Cli.Guarding;

namespace Generator.Cli.Tests.Guarding;

/// <summary>What a waiting worker does before it is asked is what it will be asked to do.</summary>
public class ExerciseTests
{
    [Fact]
    public void The_small_fight_is_one_for_which_other_ways_are_found() => Assert.Equal(ExitCode.Good, Exercise.Small.Do(CancellationToken.None));

    [Fact]
    public void It_ends_when_somebody_asks()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.Equal(ExitCode.OutOfTime, Exercise.Small.Do(stop.Token));
    }
}

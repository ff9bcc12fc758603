using Generator.Solver.Engine;

namespace Generator.Solver.Tests.Engine;

/// <summary>A request to stop that runs while the solver is freed would use memory that is gone.</summary>
public sealed class StopperTests
{
    private static readonly TimeSpan Long = TimeSpan.FromMinutes(5);

    [Fact]
    public void It_asks_until_it_is_disposed()
    {
        using var thrice = new CountdownEvent(3);
        using var stop = new CancellationTokenSource();
        using (new Stopper(() => _ = thrice.IsSet || thrice.Signal(), stop.Token))
        {
            Assert.False(thrice.Wait(60));
            Assert.Equal(3, thrice.CurrentCount);
            stop.Cancel();
            Assert.True(thrice.Wait(Long));
        }
    }

    /// <summary>The request stays under way until the other thread is about to dispose, and then some.</summary>
    [Fact]
    public void Once_disposed_no_request_runs_or_comes()
    {
        using var asked = new ManualResetEventSlim();
        using var stop = new CancellationTokenSource();
        var (begun, ended) = (0, 0);
        var stopper = new Stopper(
            () =>
            {
                Interlocked.Increment(ref begun);
                asked.Set();
                Thread.Sleep(200);
                Interlocked.Increment(ref ended);
            },
            stop.Token);
        stop.Cancel();
        Assert.True(asked.Wait(Long));
        stopper.Dispose();
        var then = Volatile.Read(ref begun);
        Assert.Equal(then, Volatile.Read(ref ended));
        Thread.Sleep(100);
        Assert.Equal(then, Volatile.Read(ref begun));
    }
}

namespace Generator.Solver.Engine;

/// <summary>
/// Asks a search to stop once a token is set, again and again, since a request before the start is lost. After <see cref="Dispose"/> no
/// request runs or comes: what it asks may then be freed.
/// </summary>
internal sealed class Stopper : IDisposable
{
    private const int Beat = 20;

    private readonly Action ask;
    private readonly Lock door = new();
    private readonly Timer timer;
    private bool isOver;

    /// <param name="ask">Asks the search to stop; must return fast.</param>
    /// <param name="stop">When to ask.</param>
    public Stopper(Action ask, CancellationToken stop)
    {
        this.ask = ask;
        timer = new Timer(_ => Look(stop), null, Beat, Beat);
    }

    /// <summary>Waits for a request that is under way.</summary>
    public void Dispose()
    {
        lock (door)
        {
            isOver = true;
        }

        timer.Dispose();
    }

    private void Look(CancellationToken stop)
    {
        if (!stop.IsCancellationRequested)
        {
            return;
        }

        lock (door)
        {
            if (!isOver)
            {
                ask();
            }
        }
    }
}

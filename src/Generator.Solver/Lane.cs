namespace Generator.Solver;

/// <summary>A part of the search that works beside the others.</summary>
internal static class Lane
{
    /// <summary>Starts work on a thread of its own: the pool would let it wait behind the others for half a second.</summary>
    public static Task<T> Start<T>(Func<T> work) =>
        Task.Factory.StartNew(work, CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default);
}

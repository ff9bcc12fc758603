using Generator.Domain;
using Generator.Library.Files;

namespace Generator.Cli.Guarding;

/// <summary>The best routine so far, on disk while the search goes on. A thread of its own writes it, so that the search never waits for the disk.</summary>
/// <param name="rescue">What <see cref="RescuePath"/> gave.</param>
internal sealed class RescueFile(string rescue)
{
    private readonly Lock door = new();
    private (Func<Routine> Routine, int Points)? waiting;
    private Task? writing;
    private string? last;
    private bool isClosed;

    /// <summary>Writes a routine soon; a newer one may overtake it, and then it is not asked for.</summary>
    /// <returns>Ends when it has been written, or could not be; null after <see cref="Close"/>.</returns>
    public Task? Keep(Func<Routine> routine, int points)
    {
        lock (door)
        {
            waiting = (routine, points);
            if (writing is null && !isClosed)
            {
                writing = Task.Factory.StartNew(WriteAll, CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default);
            }

            return writing;
        }
    }

    /// <summary>Writes no more, and deletes the file when it is not needed.</summary>
    public void Close(bool delete)
    {
        Task? ending;
        lock (door)
        {
            isClosed = true;
            waiting = delete ? null : waiting;
            ending = writing;
        }

        ending?.Wait();
        if (delete && last is not null)
        {
            Delete(last);
        }
    }

    private void WriteAll()
    {
        while (Next() is var (routine, points))
        {
            try
            {
                Write(Kept.PathOf(rescue, points), routine());
            }
#pragma warning disable CA1031 // whatever goes wrong here is no fault of the routine: the search goes on, and the guard says that nothing was kept
            catch (Exception)
#pragma warning restore CA1031
            {
                continue;
            }
        }
    }

    private (Func<Routine> Routine, int Points)? Next()
    {
        lock (door)
        {
            var next = waiting;
            waiting = null;
            writing = next is null ? null : writing;
            return next;
        }
    }

    private void Write(string path, Routine routine)
    {
        RoutineFiles.Write(path, RoutineWriter.Text(routine));
        if (last is not null && !string.Equals(last, path, StringComparison.Ordinal))
        {
            Delete(last);
        }

        last = path;
    }

    private static void Delete(string path)
    {
        try
        {
            File.Delete(path);
        }
#pragma warning disable CA1031 // it stays in its folder and hinders nobody
        catch (Exception)
#pragma warning restore CA1031
        {
            return;
        }
    }
}

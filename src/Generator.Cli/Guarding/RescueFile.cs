using Generator.Domain;
using Generator.Library.Files;

namespace Generator.Cli.Guarding;

/// <summary>The best routine so far, on disk while the search goes on. A thread of its own writes it, so that the search never waits for the disk.</summary>
/// <param name="path">The file.</param>
/// <param name="written">Told of the points of every routine that has been written.</param>
internal sealed class RescueFile(string path, Action<int> written)
{
    private readonly Lock door = new();
    private (Routine Routine, int Points)? waiting;
    private Task? writing;
    private bool isClosed;

    /// <summary>Writes a routine soon; a newer one may overtake it.</summary>
    public void Keep(Routine routine, int points)
    {
        lock (door)
        {
            waiting = (routine, points);
            if (writing is null && !isClosed)
            {
                writing = Task.Factory.StartNew(WriteAll, CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default);
            }
        }
    }

    /// <summary>Writes no more, and deletes the file when it is not needed.</summary>
    public void Close(bool delete)
    {
        Task? last;
        lock (door)
        {
            isClosed = true;
            waiting = delete ? null : waiting;
            last = writing;
        }

        last?.Wait();
        if (delete)
        {
            Delete();
        }
    }

    private void WriteAll()
    {
        while (Next() is var (routine, points))
        {
            try
            {
                RoutineFiles.Write(path, RoutineWriter.Text(routine));
                written(points);
            }
#pragma warning disable CA1031 // whatever goes wrong here is no fault of the routine: the search goes on, and the guard says that nothing was kept
            catch (Exception)
#pragma warning restore CA1031
            {
                continue;
            }
        }
    }

    private (Routine Routine, int Points)? Next()
    {
        lock (door)
        {
            var next = waiting;
            waiting = null;
            writing = next is null ? null : writing;
            return next;
        }
    }

    private void Delete()
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

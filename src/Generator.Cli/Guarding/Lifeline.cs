using System.Globalization;
using System.IO.Pipes;
using System.Runtime.InteropServices;
using Generator.Domain;

namespace Generator.Cli.Guarding;

/// <summary>
/// A worker's ties to its guard: two pipes, and the file in which the best routine so far outlives the worker. The guard says "stop" by a
/// byte; when its end closes without one, the guard is gone and the worker ends.
/// </summary>
internal sealed class Lifeline : IDisposable
{
    /// <summary>What an ending worker returns when its guard is gone, as a program ended from outside does.</summary>
    private const int Orphaned = 143;

    private const int SetFlags = 2;
    private const int CloseOnStart = 1;

    private readonly AnonymousPipeClientStream orders;
    private readonly StreamWriter news;
    private readonly CancellationTokenSource stop = new();
    private readonly RescueFile rescue;
    private readonly Lock door = new();

    private Lifeline(string ordersHandle, string newsHandle, string rescuePath)
    {
        orders = new AnonymousPipeClientStream(PipeDirection.In, ordersHandle);
        news = new StreamWriter(new AnonymousPipeClientStream(PipeDirection.Out, newsHandle)) { AutoFlush = true };
        rescue = new RescueFile(rescuePath);
        new Thread(Listen) { IsBackground = true, Name = "guard's orders" }.Start();
    }

    /// <summary>The user wants to stop.</summary>
    public CancellationToken Stop => stop.Token;

    /// <summary>The ties to a guard, or null when this process has none. Programs that this one starts do not see them.</summary>
    public static Lifeline? Find()
    {
        if (Environment.GetEnvironmentVariable(Guard.LifelineVariable)?.Split(' ', 3) is not [var orders, var news, var rescue])
        {
            return null;
        }

        Environment.SetEnvironmentVariable(Guard.LifelineVariable, null);
        KeepFromOthers(orders);
        KeepFromOthers(news);
        return new Lifeline(orders, news, rescue);
    }

    /// <summary>Says after how long from now the work is over at the latest.</summary>
    public void Limit(TimeSpan time) => Tell(News.Limit, (long)time.TotalMilliseconds);

    /// <summary>Keeps a routine in case this process does not live to write it.</summary>
    public void Keep(Func<Routine> routine, int points) => _ = rescue.Keep(routine, points);

    /// <summary>Says that the work has ended in an orderly way. What was kept is deleted, unless the end is a fault.</summary>
    public void End(int code)
    {
        rescue.Close(delete: code < ExitCode.Fault);
        Tell(News.End, code);
    }

    public void Dispose()
    {
        // The listening thread still reads: its pipe and the token live as long as the process.
        news.Dispose();
    }

    /// <summary>
    /// A browser that prints would inherit the pipe, as this process did, and the guard would wait for the end of news for as long as that browser lives. The runtime sees to it elsewhere.
    /// </summary>
    private static void KeepFromOthers(string handle)
    {
        if (OperatingSystem.IsLinux())
        {
            _ = FCntl(int.Parse(handle, CultureInfo.InvariantCulture), SetFlags, CloseOnStart);
        }
    }

    private void Listen()
    {
        while (Read() >= 0)
        {
            stop.Cancel();
        }

        Environment.Exit(Orphaned);
    }

    private int Read()
    {
        try
        {
            return orders.ReadByte();
        }
        catch (IOException)
        {
            return -1;
        }
    }

    private void Tell(string what, long number)
    {
        lock (door)
        {
            try
            {
                news.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what} {number}"));
            }
            catch (IOException)
            {
                // The guard is gone; the listening thread ends this process.
                return;
            }
        }
    }

#pragma warning disable SYSLIB1054 // the generated form needs unsafe code, which this house does without
    [DllImport("libc", EntryPoint = "fcntl")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int FCntl(int handle, int command, int flags);
#pragma warning restore SYSLIB1054
}

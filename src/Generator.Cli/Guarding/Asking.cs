using System.Runtime.InteropServices;

namespace Generator.Cli.Guarding;

/// <summary>
/// What the user asks of a guard by signals. It listens from before there is a worker: a stop that comes while the worker starts waits in the
/// pipe until the worker reads it.
/// </summary>
internal sealed class Asking : IDisposable
{
    private readonly Stream orders;
    private readonly PosixSignalRegistration[] heard;
    private volatile int stops;
    private volatile bool end;

    /// <param name="orders">The pipe to the worker.</param>
    public Asking(Stream orders)
    {
        this.orders = orders;
        heard =
        [
            PosixSignalRegistration.Create(PosixSignal.SIGINT, Stop),
            PosixSignalRegistration.Create(PosixSignal.SIGTERM, End),
            PosixSignalRegistration.Create(PosixSignal.SIGHUP, End),
            PosixSignalRegistration.Create(PosixSignal.SIGQUIT, End),
        ];
    }

    /// <summary>The search is to stop and to keep the best.</summary>
    public bool WantsStop => stops > 0;

    /// <summary>Everything is to end at once: by the second Ctrl-C, or because the program is ended from outside.</summary>
    public bool WantsEnd => end || stops > 1;

    public void Dispose()
    {
        Array.ForEach(heard, h => h.Dispose());
    }

    private void Stop(PosixSignalContext signal)
    {
        signal.Cancel = true;
        stops++;
        try
        {
            orders.WriteByte(1);
            orders.Flush();
        }
        catch (IOException)
        {
            // The worker has just ended.
            return;
        }
    }

    private void End(PosixSignalContext signal)
    {
        signal.Cancel = true;
        end = true;
    }
}

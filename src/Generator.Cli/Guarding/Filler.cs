using System.Diagnostics;
using System.Globalization;
using System.IO.Pipes;
using Generator.Rehearsal.Serving;

namespace Generator.Cli.Guarding;

/// <summary>
/// Fills sketches for the live page in a worker, whose guard this process is: it holds the worker's lifeline, so that the worker ends when this process does, however that ends.
/// </summary>
internal static class Filler
{
    /// <summary>Seconds of one search, and for how long a worker that should have ended is waited for.</summary>
    private const int Seconds = 20, Patience = 20;

    /// <param name="library">Files of the user's own records.</param>
    /// <param name="sketch">The sketch as JSON.</param>
    /// <param name="stop">Asks the worker to answer with the best so far.</param>
    public static async Task<Filled> Fill(IReadOnlyList<string> library, string sketch, CancellationToken stop)
    {
        string[] args = ["complete", "-", "--json", "--time", Seconds.ToString(CultureInfo.InvariantCulture), .. library.SelectMany(f => new[] { "--library", f })];
        var rescue = RescuePath.For(args);
        using var orders = new AnonymousPipeServerStream(PipeDirection.Out, HandleInheritability.Inheritable);
        using var news = new AnonymousPipeServerStream(PipeDirection.In, HandleInheritability.Inheritable);
        var start = Guard.WorkerOf(args, orders, news, rescue);
        start.RedirectStandardInput = start.RedirectStandardOutput = start.RedirectStandardError = true;
        using var worker = Process.Start(start) ?? throw new InvalidOperationException("No worker can be started.");
        orders.DisposeLocalCopyOfClientHandle();
        news.DisposeLocalCopyOfClientHandle();
        var told = Task.Run(() => new News().ReadAll(new StreamReader(news)), CancellationToken.None);
        using var asked = stop.Register(() => Order(orders));
        using var late = new CancellationTokenSource(TimeSpan.FromSeconds(Seconds + Patience));
        using var slow = stop.Register(() => late.CancelAfter(TimeSpan.FromSeconds(Patience)));
        try
        {
            var (output, errors) = (worker.StandardOutput.ReadToEndAsync(late.Token), worker.StandardError.ReadToEndAsync(late.Token));
            await worker.StandardInput.WriteAsync(sketch.AsMemory(), late.Token).ConfigureAwait(false);
            worker.StandardInput.Close();
            await worker.WaitForExitAsync(late.Token).ConfigureAwait(false);
            await told.ConfigureAwait(false);
            var isGood = worker.ExitCode is ExitCode.Good or ExitCode.Forbidden;
            return isGood ? new Filled(await output.ConfigureAwait(false), string.Empty) : new Filled(string.Empty, Shown(await errors.ConfigureAwait(false)));
        }
        finally
        {
            if (!worker.HasExited)
            {
                worker.Kill(entireProcessTree: true);
            }

            LeftBehind.Clear(null, rescue);
        }
    }

    private static string Shown(string errors) => errors.Trim() is { Length: > 0 } text ? text : "No filling was found.";

    private static void Order(AnonymousPipeServerStream orders)
    {
        try
        {
            orders.WriteByte(1);
            orders.Flush();
        }
        catch (Exception error) when (error is IOException or ObjectDisposedException)
        {
            // The worker has just ended.
            return;
        }
    }
}

using System.Diagnostics;
using System.IO.Pipes;
using Generator.Cli.Work;
using Generator.Rehearsal.Offers;
using Newtonsoft.Json;

namespace Generator.Cli.Guarding;

/// <summary>
/// A worker that is started before anybody knows for what, so that nobody waits for its start: it reads the library, and then its command line as the first line of standard input. This process
/// is its guard and holds its lifeline, so that it ends when this one does, however that ends.
/// </summary>
internal sealed class Waiting : IDisposable
{
    /// <summary>In place of a command.</summary>
    public const string Word = "waiting";

    private readonly AnonymousPipeServerStream orders = new(PipeDirection.Out, HandleInheritability.Inheritable);
    private readonly AnonymousPipeServerStream news = new(PipeDirection.In, HandleInheritability.Inheritable);
    private readonly string rescue = RescuePath.For([]);
    private readonly Process worker;
    private readonly Task told;

    public Waiting()
    {
        var start = Guard.WorkerOf([Word], orders, news, rescue);
        start.RedirectStandardInput = start.RedirectStandardOutput = start.RedirectStandardError = true;
        worker = Process.Start(start) ?? throw new InvalidOperationException("No worker can be started.");
        orders.DisposeLocalCopyOfClientHandle();
        news.DisposeLocalCopyOfClientHandle();
        told = Task.Run(() => new News().ReadAll(new StreamReader(news)), CancellationToken.None);
    }

    public bool IsThere => !worker.HasExited;

    /// <summary>The worker's side: reads the library, and waits for a command line. Null when there will be none.</summary>
    public static string[]? Line()
    {
        EarlyBook.Begin(["complete"]);
        EarlyBook.Bundled();
        return Console.In.ReadLine() is { } line ? JsonConvert.DeserializeObject<string[]>(line) : null;
    }

    /// <summary>Has it do something, once.</summary>
    /// <param name="words">The command line.</param>
    /// <param name="input">What follows on standard input.</param>
    /// <param name="patience">For how long it is waited for, whatever its command line says, and for how long once it was asked to stop.</param>
    /// <param name="stop">Asks it to answer with the best so far.</param>
    public async Task<Answer> Do(string[] words, string input, (TimeSpan Work, TimeSpan End) patience, CancellationToken stop)
    {
        using var asked = stop.Register(Order);
        using var late = new CancellationTokenSource(patience.Work + patience.End);
        using var slow = stop.Register(() => late.CancelAfter(patience.End));
        var (output, errors) = (worker.StandardOutput.ReadToEndAsync(late.Token), worker.StandardError.ReadToEndAsync(late.Token));
        await worker.StandardInput.WriteLineAsync(JsonConvert.SerializeObject(words, Formatting.None).AsMemory(), late.Token).ConfigureAwait(false);
        await worker.StandardInput.WriteAsync(input.AsMemory(), late.Token).ConfigureAwait(false);
        worker.StandardInput.Close();
        await worker.WaitForExitAsync(late.Token).ConfigureAwait(false);
        await told.ConfigureAwait(false);
        var json = await output.ConfigureAwait(false);
        var isGood = worker.ExitCode is ExitCode.Good or ExitCode.Forbidden || (worker.ExitCode == ExitCode.OutOfTime && json.Length > 0);
        return isGood ? new Answer(json, string.Empty) : new Answer(string.Empty, (await errors.ConfigureAwait(false)).Trim() is { Length: > 0 } text ? text : "Nothing was found.");
    }

    public void Dispose()
    {
        if (!worker.HasExited)
        {
            worker.Kill(entireProcessTree: true);
        }

        worker.Dispose();
        orders.Dispose();
        news.Dispose();
        LeftBehind.Clear(null, rescue);
    }

    private void Order()
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

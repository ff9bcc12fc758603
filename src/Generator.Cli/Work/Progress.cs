using System.Diagnostics;
using System.Globalization;
using Spectre.Console;

namespace Generator.Cli.Work;

/// <summary>Shows how a search goes: on a screen one line that moves, whether there is news or not; anywhere else a line for every bit of news.</summary>
/// <param name="lines">Where lines go when there is no screen.</param>
/// <param name="screen">The screen; null where lines are only ever added.</param>
internal sealed class Progress(TextWriter lines, IAnsiConsole? screen)
{
    private static readonly TimeSpan Beat = TimeSpan.FromMilliseconds(200);

    private readonly Stopwatch clock = Stopwatch.StartNew();
    private readonly Lock gate = new();
    private string last = "nothing yet";

    public static Progress At(Desk desk) => new(desk.Err, desk.Screen());

    /// <summary>Runs a search. What it throws is thrown here.</summary>
    /// <param name="what">What goes on: "Drafting".</param>
    /// <param name="search">The search, which calls <see cref="Tell"/>.</param>
    public T Run<T>(string what, Func<T> search)
    {
        if (screen is null)
        {
            return search();
        }

        var work = Task.Run(search);
        screen.Live(Line(what)).AutoClear(true).Start(live =>
        {
            while (!((IAsyncResult)work).AsyncWaitHandle.WaitOne(Beat))
            {
                live.UpdateTarget(Line(what));
            }
        });
        return work.GetAwaiter().GetResult();
    }

    /// <summary>News, to which the time is added: "3 points, no fewer than 0".</summary>
    public void Tell(string news)
    {
        lock (gate)
        {
            last = news;
            if (screen is null)
            {
                lines.WriteLine(Timed());
            }
        }
    }

    private Text Line(string what)
    {
        lock (gate)
        {
            return new Text($"{what}: {Timed()}. Ctrl-C ends it.");
        }
    }

    private string Timed() => string.Create(CultureInfo.InvariantCulture, $"{last}, after {clock.Elapsed.TotalSeconds:0.0} s");
}

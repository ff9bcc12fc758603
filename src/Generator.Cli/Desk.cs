using Generator.Domain;
using Generator.Library;
using Generator.Paperwork.Printing;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Solver;
using Generator.Solver.Questions;
using Spectre.Console;

namespace Generator.Cli;

/// <summary>What a command works with: where it reads and writes, what stops it, and who drafts.</summary>
public sealed class Desk
{
    /// <summary>Limit of work that has no <c>--time</c> and takes seconds.</summary>
    public static readonly TimeSpan Untimed = TimeSpan.FromMinutes(10);

    public required TextReader In { get; init; }

    /// <summary>Results.</summary>
    public required TextWriter Out { get; init; }

    /// <summary>Errors, progress and remarks, so that results can be piped.</summary>
    public required TextWriter Err { get; init; }

    /// <summary>Set once the user wants to stop.</summary>
    public CancellationToken Stop { get; init; }

    /// <summary>How long a search may last where its command line does not say; null for what is usual with the command. A machine that has much else to do needs more.</summary>
    public TimeSpan? Patience { get; init; }

    /// <summary>To be told after how long from now the work is over at the latest, so that whoever watches it knows when it hangs.</summary>
    public Action<TimeSpan> Limit { get; init; } = _ => { };

    /// <summary>To be told of every better routine and its points while a search goes on, so that it is kept whatever happens; how it is to be written is asked only of those that are.</summary>
    public Action<Func<Routine>, int> Keep { get; init; } = (_, _) => { };

    /// <summary>The screen on which progress may move; null where lines are only ever added. Asked for only when there is progress.</summary>
    public Func<IAnsiConsole?> Screen { get; init; } = () => null;

    /// <summary>Prints a page as PDF; null where there is no browser to print with. Asked for only when something is printed.</summary>
    public Func<Func<string, CancellationToken, byte[]>?> Printer { get; init; } =
        () => Browser.Find(Environment.GetEnvironmentVariable("PATH")) is { } browser ? browser.Print : null;

    /// <summary>Draws a page so many units wide and high as PNG; null where there is no browser to draw with.</summary>
    public Func<Func<string, int, int, CancellationToken, byte[]>?> Camera { get; init; } =
        () => Browser.Find(Environment.GetEnvironmentVariable("PATH")) is { } browser ? browser.Picture : null;

    /// <summary>Keeps routines as they are written in the end: with the stances to which the hero changes.</summary>
    internal Action<Routine, int> Keeper(Book book)
    {
        Scene? scene = null;
        return (routine, points) => Keep(() => StanceNotes.Written(scene = ReferenceEquals(scene?.Brief, routine.Brief) ? scene : new Scene(routine.Brief, book), routine), points);
    }

    /// <summary>Turns a brief into a routine.</summary>
    public Func<Brief, Book, DraftOptions, IProgress<DraftProgress>, CancellationToken, DraftResult> Draft { get; init; } =
        (brief, book, options, progress, stop) => Drafting.Draft(brief, book, options, progress, stop);
}

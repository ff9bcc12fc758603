using Generator.Library;
using Generator.Library.Loading;
using Generator.Library.Reading;

namespace Generator.Cli.Work;

/// <summary>
/// The library that comes with the program, read on a thread of its own while the command line is being worked out: a tenth of a second of work, half of a
/// start. Nobody reads it early but the program itself, and only for commands that need it whatever else stands on the line.
/// </summary>
internal static class EarlyBook
{
    private static readonly string[] Commands = ["draft", "complete", "audit", "alternatives", "repair", "revise", "explain", "paperwork", "rehearse"];

    private static readonly string[] Otherwise = ["--help", "-h", "--version", "--explain"];

    private static Task<Read<Book>>? reading;

    /// <summary>Begins to read when the command line is one that needs the library without any files of the user's own.</summary>
    public static void Begin(string[] args)
    {
        if (IsWanted(args))
        {
            reading = Task.Factory.StartNew(() => LibraryLoader.LoadBundled(), CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default);
        }
    }

    /// <summary>The library, as far as it has been read or else read now.</summary>
    public static Read<Book> Bundled() => reading?.GetAwaiter().GetResult() ?? LibraryLoader.LoadBundled();

    internal static bool IsWanted(string[] args) => args is [var command, ..]
        && Array.IndexOf(Commands, command) >= 0
        && !Array.Exists(args, a => Array.IndexOf(Otherwise, a) >= 0 || a.StartsWith("--library", StringComparison.Ordinal));
}

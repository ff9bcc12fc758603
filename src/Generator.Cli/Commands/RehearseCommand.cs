using System.CommandLine;
using System.ComponentModel;
using System.Diagnostics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using Generator.Cli.Guarding;
using Generator.Cli.Options;
using Generator.Cli.Work;
using Generator.Library;
using Generator.Rehearsal.Documents;
using Generator.Rehearsal.Offers;
using Generator.Rehearsal.Serving;

namespace Generator.Cli.Commands;

/// <summary><c>generator rehearse</c>: a page in the browser on which a fight is written, audited while it is typed, and filled.</summary>
internal static class RehearseCommand
{
    private const int LastPort = 65535;

    public static Command Of(Desk desk)
    {
        var file = CommonOptions.File("FILE", "A routine or sketch in JSON or CSV, notes, or a brief; nothing for a new fight in this folder.");
        var port = NumberOption.Whole("--port", "PORT", "The port on this machine; without it any that is free.", 1024, LastPort);
        var quiet = new Option<bool>("--no-browser") { Description = "Prints the address only." };
        var library = CommonOptions.Library();
        var command = new HouseCommand("rehearse", "Opens a fight as a page in the browser: written and audited at once, filled, undone, saved.")
        {
            file, port, quiet, library,
        };
        command.Example = "generator rehearse cinema.notes.txt";
        command.ExitCodes =
        [
            (ExitCode.Good, "It was ended with Ctrl-C, or its terminal was closed."),
            (ExitCode.Input, "Something that was given is wrong."),
        ];
        command.SetAction(parsed => Run(desk, parsed.GetValue(file), parsed.GetValue(port) ?? 0, parsed.GetValue(quiet), parsed.GetValue(library) ?? []));
        return command;
    }

    private static int Run(Desk desk, string? path, int port, bool quiet, IReadOnlyList<string> library)
    {
        if (path is Inputs.Dash)
        {
            throw new RefusedException("generator rehearse: a page needs a file, not standard input.", "Maybe name a routine, notes or a brief, or nothing for a new fight.");
        }

        var book = Inputs.Book(library);
        return Serve(desk, path, port, quiet, library, book).GetAwaiter().GetResult();
    }

    /// <summary>By itself, so that no other command loads the server.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static async Task<int> Serve(Desk desk, string? path, int port, bool quiet, IReadOnlyList<string> library, Book book)
    {
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(desk.Stop);
        using var ended = PosixSignalRegistration.Create(PosixSignal.SIGTERM, End);
        using var hungUp = PosixSignalRegistration.Create(PosixSignal.SIGHUP, End);
        try
        {
            var (document, remark) = path is null ? Opening.New(Directory.GetCurrentDirectory(), book) : Opening.Of(path, book);
            using var solving = new Solving(library, () => Question.Likely(document.Now));
            await using var server = await LiveServer.Start(document, solving.Of, port).ConfigureAwait(false);
            await desk.Out.WriteLineAsync(server.Address).ConfigureAwait(false);
            await desk.Out.FlushAsync(stop.Token).ConfigureAwait(false);
            await desk.Err.WriteLineAsync((remark is null ? string.Empty : remark + "\n") + "For this machine and whoever has the address. Ctrl-C ends it; every edit is kept as it is made.").ConfigureAwait(false);
            if (!quiet)
            {
                Show(server.Address);
            }

            await Task.Delay(Timeout.Infinite, stop.Token).ContinueWith(_ => { }, CancellationToken.None, TaskContinuationOptions.None, TaskScheduler.Default).ConfigureAwait(false);
            return ExitCode.Good;
        }
        catch (RefusedEditException refused)
        {
            throw new RefusedException(refused.Message, refused.Maybe);
        }
        catch (OperationCanceledException) when (stop.IsCancellationRequested)
        {
            // It was ended before the address was out.
            return ExitCode.Good;
        }
        catch (IOException taken)
        {
            throw new RefusedException($"generator rehearse: nothing can be served. {taken.Message}", taken);
        }

        void End(PosixSignalContext signal)
        {
            signal.Cancel = true;
            stop.Cancel();
        }
    }

    private static void Show(string address)
    {
        try
        {
            using var browser = Process.Start(new ProcessStartInfo(address) { UseShellExecute = true });
        }
        catch (Exception fault) when (fault is Win32Exception or PlatformNotSupportedException or FileNotFoundException)
        {
            // There is none to open; the address is printed.
            return;
        }
    }
}

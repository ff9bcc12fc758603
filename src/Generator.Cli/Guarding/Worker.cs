using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Text;
using Generator.Cli.Work;

namespace Generator.Cli.Guarding;

/// <summary>Does the work in this process: under a guard, or alone.</summary>
internal static class Worker
{
    [MethodImpl(MethodImplOptions.NoInlining)]
    public static int Run(string[] args)
    {
        using var lifeline = Lifeline.Find();
        if (lifeline is not null && args is [Waiting.Word])
        {
            args = Waiting.Line() ?? [];
        }
        else
        {
            EarlyBook.Begin(args);
        }

        try
        {
            Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
            using var output = TerminalOutput.Of(new StandardOutput(StandardStreams.IsOutputClosed ? null : Console.Out), Console.IsOutputRedirected);
            var code = lifeline is null ? Alone(args, output) : Guarded(args, lifeline, output);
            output.Flush();
            return code;
        }
        catch (OutputException full)
        {
            Console.Error.WriteLine(full.Message);
            lifeline?.End(ExitCode.NoOutput);
            return ExitCode.NoOutput;
        }
    }

    private static int Alone(string[] args, TextWriter output)
    {
        using var stop = new CancellationTokenSource();
        Console.CancelKeyPress += (_, pressed) =>
        {
            // The first Ctrl-C ends the search and keeps the best; the second ends the program.
            pressed.Cancel = !stop.IsCancellationRequested;
            stop.Cancel();
        };
        return CommandLine.Run(args, new Desk { In = StandardStreams.In, Out = output, Err = TerminalOutput.Of(Console.Error, Console.IsErrorRedirected), Stop = stop.Token, Screen = ErrorScreen.Find });
    }

    private static int Guarded(string[] args, Lifeline lifeline, TextWriter output)
    {
        // A terminal sends Ctrl-C to both processes: the guard alone answers it and tells us through the lifeline.
        using var deaf = PosixSignalRegistration.Create(PosixSignal.SIGINT, signal => signal.Cancel = true);
        var code = CommandLine.Run(args, new Desk
        {
            In = StandardStreams.In,
            Out = output,
            Err = TerminalOutput.Of(Console.Error, Console.IsErrorRedirected),
            Stop = lifeline.Stop,
            Screen = ErrorScreen.Find,
            Limit = lifeline.Limit,
            Keep = lifeline.Keep,
        });
        output.Flush();
        lifeline.End(code);
        return code;
    }
}

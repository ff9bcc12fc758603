using System.Text;
using Generator.Cli;
using Generator.Cli.Work;

using var stop = new CancellationTokenSource();
Console.CancelKeyPress += (_, pressed) =>
{
    // The first Ctrl-C ends the search and keeps the best; the second ends the program.
    pressed.Cancel = !stop.IsCancellationRequested;
    stop.Cancel();
};
Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
return CommandLine.Run(args, new Desk
{
    In = Console.In,
    Out = Console.Out,
    Err = Console.Error,
    Stop = stop.Token,
    Screen = ErrorScreen.Find,
});

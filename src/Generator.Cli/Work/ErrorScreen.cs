using Spectre.Console;

namespace Generator.Cli.Work;

/// <summary>The terminal behind standard error, if there is one.</summary>
internal static class ErrorScreen
{
    /// <summary>Null when standard error goes to a file or a pipe, or to a terminal that cannot move its cursor.</summary>
    public static IAnsiConsole? Find()
    {
        if (Console.IsErrorRedirected)
        {
            return null;
        }

        var screen = AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(Console.Error) });
        return screen.Profile.Capabilities is { Interactive: true, Ansi: true } ? screen : null;
    }
}

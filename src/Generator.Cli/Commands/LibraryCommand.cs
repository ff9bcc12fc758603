using System.CommandLine;
using Generator.Cli.Help;

namespace Generator.Cli.Commands;

/// <summary><c>generator library</c>: what techniques, attacks and reactions there are.</summary>
internal static class LibraryCommand
{
    public static Command Of(Desk desk)
    {
        var command = new HouseCommand("library", "Shows the techniques, attacks and reactions of the library.")
        {
            LibraryListCommand.Of(desk),
            LibraryShowCommand.Of(desk),
            LibrarySearchCommand.Of(desk),
            LibraryCheckCommand.Of(desk),
            LibraryAddCommand.Of(desk),
            LibraryPicturesCommand.Of(desk),
        };
        command.Example = "generator library show \"left hook\"";
        command.SetAction(parsed =>
        {
            desk.Out.Write(HelpPage.Of(parsed.CommandResult));
            return ExitCode.Good;
        });
        return command;
    }
}

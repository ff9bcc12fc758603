using Generator.Cli.Options;
using Generator.Cli.Work;
using Generator.Paperwork.Text;
using Generator.Rules.Connecting;

namespace Generator.Cli.Commands;

/// <summary><c>generator library check</c>: whether every move leads on.</summary>
internal static class LibraryCheckCommand
{
    public static HouseCommand Of(Desk desk)
    {
        var library = CommonOptions.Library();
        var command = new HouseCommand("check", "Checks that every move leads on: an answer to every attack, a way out of every grip, a follow-up for every posture.") { library };
        command.Example = "generator library check --library mine.json";
        command.ExitCodes =
        [
            (ExitCode.Good, "There is no dead end."),
            (ExitCode.Forbidden, "There are dead ends; each is listed with the moves that lead there."),
            (ExitCode.Input, "Something that was given is wrong."),
        ];
        command.SetAction(parsed =>
        {
            var book = Inputs.Book(parsed.GetValue(library));
            var connections = Connections.Of(book);
            desk.Out.Write(LibraryCheck.Of(book, connections));
            return connections.DeadEnds.Count == 0 ? ExitCode.Good : ExitCode.Forbidden;
        });
        return command;
    }
}

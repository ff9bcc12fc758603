using System.CommandLine;
using Generator.Cli.Options;
using Generator.Cli.Work;
using Generator.Library;
using Generator.Paperwork.Text;
using Generator.Rules.Connecting;

namespace Generator.Cli.Commands;

/// <summary><c>generator library add</c>: checks a file of one's own against the whole library.</summary>
internal static class LibraryAddCommand
{
    public static Command Of(Desk desk)
    {
        var file = new Argument<string>("FILE") { Description = "A file of your own techniques, attacks or reactions." };
        CommonOptions.RefuseOptions(file);
        var command = new HouseCommand("add", "Checks a file of your own against the whole library, and says what its records connect to.") { file };
        command.Example = "generator library add mine.json";
        command.ExitCodes =
        [
            (ExitCode.Good, "The file fits in."),
            (ExitCode.Forbidden, "The file brings dead ends; each is listed."),
            (ExitCode.Input, "The file is wrong."),
        ];
        command.SetAction(parsed =>
        {
            var path = parsed.GetRequiredValue(file);
            var (before, after) = (Inputs.Book([]), Inputs.Book([path]));
            var ends = Brought(before, Connections.Of(after).DeadEnds);
            desk.Out.Write(LibraryAdded.Of(before, after, ends));
            desk.Err.WriteLine($"The file stays where it is: name it with --library {path}.");
            return ends.Count == 0 ? ExitCode.Good : ExitCode.Forbidden;
        });
        return command;
    }

    /// <summary>Dead ends that the library has not by itself, which is looked at only where there are any.</summary>
    private static IReadOnlyList<DeadEnd> Brought(Book before, IReadOnlyList<DeadEnd> ends)
    {
        var known = ends.Count == 0 ? [] : Connections.Of(before).DeadEnds.Select(d => (d.Form, d.Lacks)).ToHashSet();
        return [.. ends.Where(d => !known.Contains((d.Form, d.Lacks)))];
    }
}

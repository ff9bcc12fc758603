using System.CommandLine;
using Generator.Cli.Options;
using Generator.Cli.Work;
using Generator.Library.Reading;
using Generator.Paperwork.Text;

namespace Generator.Cli.Commands;

/// <summary><c>generator library list</c>.</summary>
internal static class LibraryListCommand
{
    public static Command Of(Desk desk)
    {
        var family = CommonOptions.File("FAMILY", $"One of {string.Join(", ", LibraryList.Parts)}; without it all.");
        var library = CommonOptions.Library();
        var command = new HouseCommand("list", "Lists ids, names and notebook words by family.") { family, library };
        command.Example = "generator library list throw";
        command.SetAction(parsed =>
        {
            desk.Out.Write(LibraryList.Of(Inputs.Book(parsed.GetValue(library)), PartOf(parsed.GetValue(family))));
            return ExitCode.Good;
        });
        return command;
    }

    /// <summary>Takes the plural as well.</summary>
    private static string? PartOf(string? word)
    {
        if (word is null)
        {
            return null;
        }

        var known = LibraryList.Parts.FirstOrDefault(p => string.Equals(p, word, StringComparison.OrdinalIgnoreCase) || string.Equals(Plural(p), word, StringComparison.OrdinalIgnoreCase));
        return known ?? throw new RefusedException(
            $"generator library list: there is no family {FieldText.Quote(word)}.",
            NearestWords.Maybe(word, LibraryList.Parts, $"Maybe one of these is meant: {string.Join(", ", LibraryList.Parts)}."));
    }

    private static string Plural(string part) => part.EndsWith("sh", StringComparison.Ordinal) ? part + "es" : part + "s";
}

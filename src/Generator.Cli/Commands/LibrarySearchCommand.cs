using System.CommandLine;
using Generator.Cli.Options;
using Generator.Cli.Work;
using Generator.Library.Reading;
using Generator.Library.Words;
using Generator.Paperwork.Text;

namespace Generator.Cli.Commands;

/// <summary><c>generator library search</c>.</summary>
internal static class LibrarySearchCommand
{
    public static Command Of(Desk desk)
    {
        var words = new Argument<string[]>("WORDS") { Arity = ArgumentArity.OneOrMore, Description = "What you remember of it: a name, notebook words, a hazard. Typing mistakes do no harm." };
        var library = CommonOptions.Library();
        var command = new HouseCommand("search", "Finds techniques, attacks and reactions by words.") { words, library };
        command.Example = "generator library search \"duck under\"";
        command.SetAction(parsed =>
        {
            var asked = string.Join(' ', parsed.GetRequiredValue(words));
            var hits = LibrarySearch.Find(Inputs.Book(parsed.GetValue(library)), asked);
            if (hits.Count == 0)
            {
                throw new RefusedException($"generator library search: nothing in the library is like {FieldText.Quote(asked)}.", "Maybe fewer words, or generator library list, find it.");
            }

            desk.Out.Write(LibraryList.Of(hits));
            return ExitCode.Good;
        });
        return command;
    }
}

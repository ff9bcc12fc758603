using System.CommandLine;
using Generator.Cli.Options;
using Generator.Cli.Work;
using Generator.Figures.Painting;

namespace Generator.Cli.Commands;

/// <summary><c>generator library pictures</c>.</summary>
internal static class LibraryPicturesCommand
{
    public static Command Of(Desk desk)
    {
        var file = new Argument<string>("FILE") { Description = "The page to write, in HTML." };
        CommonOptions.RefuseOptions(file);
        var library = CommonOptions.Library();
        var command = new HouseCommand("pictures", "Writes a page with a blocking picture of every technique, attack and reaction.") { file, library };
        command.Example = "generator library pictures pictures.html";
        command.SetAction(parsed =>
        {
            var path = parsed.GetRequiredValue(file);
            Outputs.Check(path, "FILE");
            var book = Inputs.Book(parsed.GetValue(library));
            Outputs.Write(path, ContactSheet.Html(Pictures.Of(book), book), "FILE");
            desk.Out.WriteLine($"{path} holds pictures of {book.Techniques.Count} techniques,\n{book.Attacks.Count} attacks and {book.Reactions.Count} reactions; both sides of one share a picture.");
            return ExitCode.Good;
        });
        return command;
    }
}

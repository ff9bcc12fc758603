using System.CommandLine;
using Generator.Cli.Options;
using Generator.Cli.Work;
using Generator.Paperwork;
using Generator.Paperwork.Shaping;
using Generator.Rules;

namespace Generator.Cli.Commands;

/// <summary><c>generator shape</c>: how a routine runs as a fight, beside what is wanted, and what would lift it.</summary>
internal static class ShapeCommand
{
    public static Command Of(Desk desk)
    {
        var routine = CommonOptions.File("ROUTINE", "The routine as a file: JSON, CSV or notes, any cell open; or - for standard input.");
        var brief = CommonOptions.Brief("The brief it answers; without it the one in the routine, else defaults.");
        var output = CommonOptions.Out("Writes the sheet into a file instead of printing it.");
        var picture = new Option<string?>("--picture") { HelpName = "FILE", Description = "Draws it as well: weight, who is on top and a lane for each performer, as SVG for a browser." };
        var json = CommonOptions.Json();
        var library = CommonOptions.Library();
        var command = new HouseCommand("shape", "Tells how a fight runs: rhythm, who is on top, endings, wear, and what would lift it.")
        {
            routine, brief, output, picture, json, library,
        };
        command.Example = "generator shape ferry.routine.json --picture ferry.svg";
        command.ExitCodes =
        [
            (ExitCode.Good, "The shape is told, whatever it is."),
            (ExitCode.Input, "Something that was given is wrong."),
            (ExitCode.OutOfTime, "Time ran out before a sketch could be filled in."),
        ];
        command.SetAction(parsed => Run(desk, parsed.GetValue(routine), parsed.GetValue(brief), parsed.GetValue(output), parsed.GetValue(picture), parsed.GetValue(json), parsed.GetValue(library) ?? []));
        return command;
    }

    private static int Run(Desk desk, string? path, string? briefPath, string? output, string? picture, bool json, IReadOnlyList<string> library)
    {
        Pairs.Check("shape", path, briefPath);
        Outputs.Check(output);
        Outputs.Check(picture, "--picture");
        var book = Inputs.Book(library);
        var routine = Pairs.Routine(path, briefPath, book, desk, "this sheet uses");
        Allies.Refuse("shape", routine.Brief, "tells no shape");
        var source = PaperSource.Of(new Scene(routine.Brief, book), routine);
        var text = json ? ShapeJson.Of(source.Shape) : source.Head.Above(ShapeSheet.Of(source.Shape));
        if (picture is not null)
        {
            Outputs.Write(picture, ShapePicture.Of(source.Shape, source.Head), "--picture");
            desk.Err.WriteLine($"The picture is in {picture}.");
        }

        Outputs.Show(desk, output, text, "sheet");

        return ExitCode.Good;
    }
}

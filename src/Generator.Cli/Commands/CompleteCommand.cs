using System.CommandLine;
using Generator.Cli.Options;
using Generator.Cli.Work;

namespace Generator.Cli.Commands;

/// <summary><c>generator complete</c>: fills in what notes leave open.</summary>
internal static class CompleteCommand
{
    public static Command Of(Desk desk)
    {
        var sketch = CommonOptions.File("SKETCH", "Notes in plain words, JSON or CSV with any cell open, or - for standard input.");
        var brief = CommonOptions.Brief("The brief the sketch answers; without it the people named in it, on a floor of 8 by 8 m. It may leave out the length: the rows are enough.");
        var search = new SearchOptions("Another number may give another filling", "10", CommonOptions.Out("Writes the routine: as CSV when the name ends in .csv, else as JSON."));
        var command = new HouseCommand("complete", "Fills in what notes or rows leave open so that nothing is unsafe or broken, and as little as possible of what they say gives.")
        {
            sketch, brief, search.Seed, search.Time, search.Out, search.Json, search.Library,
        };
        command.Example = "generator complete cinema.notes.txt --out cinema.routine.json";
        command.ExitCodes =
        [
            (ExitCode.Good, "Everything that was said stands."),
            (ExitCode.Forbidden, "Something that was said had to give; the answer says what."),
            (ExitCode.Input, "Something that was given is wrong."),
            (ExitCode.Impossible, "No routine can be made of it."),
            (ExitCode.OutOfTime, "Time ran out before there was a routine."),
            ExitCode.BrokenDownHere,
        ];
        command.SetAction(parsed => CompleteRun.Of(desk, search.Read(parsed, new CompleteAsked { Sketch = parsed.GetValue(sketch), Brief = parsed.GetValue(brief) })));
        return command;
    }
}

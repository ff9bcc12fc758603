using System.CommandLine;
using Generator.Cli.Options;
using Generator.Cli.Work;

namespace Generator.Cli.Commands;

/// <summary><c>generator repair</c>: the smallest change that leaves nothing unsafe or broken.</summary>
internal static class RepairCommand
{
    public static Command Of(Desk desk)
    {
        var routine = CommonOptions.File("ROUTINE", "The routine as a file: JSON, CSV or notes, any cell open; or - for standard input.");
        var brief = CommonOptions.Brief("The brief it answers; without it the one in the routine, else defaults. It may leave out the length.");
        var keep = MoveRange.Option("Moves that stay as they are, such as 5 or 5-7, beside the hero moments of the brief. May be given several times.", counts: false);
        var search = new SearchOptions("Another number may give another repair", "10", CommonOptions.Out("Writes the repaired routine: as CSV when the name ends in .csv, else as JSON."));
        var command = new HouseCommand("repair", "Changes as few moves of a routine as possible, rather a reaction than a technique, and then as few counts, so that nothing in it is unsafe or broken.")
        {
            routine, brief, keep, search.Seed, search.Time, search.Out, search.Json, search.Library,
        };
        command.Example = "generator repair ferry.routine.json --keep 12 --out ferry.routine.json";
        command.ExitCodes =
        [
            (ExitCode.Good, "There is a repair, or nothing was wrong."),
            (ExitCode.Input, "Something that was given is wrong."),
            (ExitCode.Impossible, "No routine can satisfy the brief."),
            (ExitCode.OutOfTime, "Time ran out before there was a repair."),
            ExitCode.BrokenDownHere,
        ];
        command.SetAction(parsed => RepairRun.Of(desk, search.Read(parsed, new RepairAsked
        {
            Routine = parsed.GetValue(routine),
            Brief = parsed.GetValue(brief),
            Keep = parsed.GetValue(keep) ?? [],
        })));
        return command;
    }
}

using System.CommandLine;
using Generator.Cli.Options;
using Generator.Cli.Work;

namespace Generator.Cli.Commands;

/// <summary><c>generator alternatives</c>: several routines around the same hero moments.</summary>
internal static class AlternativesCommand
{
    public static Command Of(Desk desk)
    {
        var file = CommonOptions.File("FILE", "A brief, a routine with its brief inside, or notes; or - for standard input.");
        var brief = CommonOptions.Brief("The brief that the routine answers, when FILE is a routine without one.");
        var keep = MoveRange.Option("Moves of the routine to keep as a hero moment: 5 or 5-7 at their counts, 5-7@+2 each up to two counts later (@-1+2: or one sooner), 5@20-28 to start within these counts, 5@anywhere. May be given several times.", counts: true);
        var number = NumberOption.Whole("--number", "N", "How many (5).", 2, 9);
        var differ = NumberOption.Whole("--differ", "PERCENT", "Share of the other moves in which each two differ at least (30).", 1, 100);
        var slack = NumberOption.Whole("--slack", "POINTS", "How many points more than the best one may have (10).", 0, 1000);
        var each = new Option<bool>("--each") { Description = "Writes each as a line of JSON as soon as it is found, instead of a set that is chosen in the end." };
        var folder = new Option<string?>("--out") { HelpName = "FOLDER", Description = "Writes the routines into this folder, alternative-1.routine.json and so on; it is made when it is not there." };
        var search = new SearchOptions("Another number gives other routines", "30", folder);
        var command = new HouseCommand("alternatives", "Drafts several routines around the same hero moments, and shows side by side what is different. Each has passed the audit.")
        {
            file, brief, keep, number, differ, slack, each, search.Seed, search.Time, search.Out, search.Json, search.Library,
        };
        command.Example = "generator alternatives ferry.routine.json --keep 12-13 --out ferry-ways";
        command.ExitCodes =
        [
            (ExitCode.Good, "There are as many as were asked for."),
            (ExitCode.Input, "Something that was given is wrong."),
            (ExitCode.Impossible, "No routine can satisfy the brief."),
            (ExitCode.OutOfTime, "Time ran out before there were as many; those that were found are shown."),
            ExitCode.BrokenDownHere,
        ];
        command.SetAction(parsed => AlternativesRun.Of(desk, search.Read(parsed, new AlternativesAsked
        {
            File = parsed.GetValue(file),
            Brief = parsed.GetValue(brief),
            Keep = parsed.GetValue(keep) ?? [],
            Number = parsed.GetValue(number),
            Differ = parsed.GetValue(differ),
            Slack = parsed.GetValue(slack),
            Each = parsed.GetValue(each),
        })));
        return command;
    }
}

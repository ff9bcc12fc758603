using System.CommandLine;
using Generator.Cli.Options;
using Generator.Cli.Work;

namespace Generator.Cli.Commands;

/// <summary><c>generator revise</c>: fits a taught routine to a changed brief with the least to teach anew.</summary>
internal static class ReviseCommand
{
    public static Command Of(Desk desk)
    {
        var routine = CommonOptions.File("ROUTINE", "The routine as taught: JSON, CSV or notes; or - for standard input.");
        var brief = CommonOptions.Brief("The brief as it is now. Attackers are known by their names; a new name in the same place takes over the part.");
        var count = NumberOption.Whole("--count-cost", "N", "What another count costs each performer (1).", 0, 1000);
        var technique = NumberOption.Whole("--technique-cost", "N", "What another technique, attack or reaction in the same place costs (4).", 0, 1000);
        var order = NumberOption.Whole("--order-cost", "N", "What a move that is new or another attacker's costs (10).", 0, 1000);
        var search = new SearchOptions("Another number may give another revision", "15", CommonOptions.Out("Writes the revised routine: as CSV when the name ends in .csv, else as JSON."));
        var command = new HouseCommand("revise", "Fits a routine that has been taught to a brief that has changed, so that the performers relearn as little as possible.")
        {
            routine, brief, count, technique, order, search.Seed, search.Time, search.Out, search.Json, search.Library,
        };
        command.Example = "generator revise ferry.routine.json --brief no-piet.brief.json --out new.json";
        command.ExitCodes =
        [
            (ExitCode.Good, "There is a revision, or the routine answers the new brief as it is."),
            (ExitCode.Input, "Something that was given is wrong."),
            (ExitCode.Impossible, "No routine can satisfy the brief."),
            (ExitCode.OutOfTime, "Time ran out before there was a revision."),
            ExitCode.BrokenDownHere,
        ];
        command.SetAction(parsed => ReviseRun.Of(desk, search.Read(parsed, new ReviseAsked
        {
            Routine = parsed.GetValue(routine),
            Brief = parsed.GetValue(brief),
            CountCost = parsed.GetValue(count),
            TechniqueCost = parsed.GetValue(technique),
            OrderCost = parsed.GetValue(order),
        })));
        return command;
    }
}

using System.CommandLine;
using Generator.Cli.Options;
using Generator.Cli.Work;

namespace Generator.Cli.Commands;

/// <summary><c>generator explain</c>: why there is no routine for a brief, or why a move is as it is.</summary>
internal static class ExplainCommand
{
    public static Command Of(Desk desk)
    {
        var file = CommonOptions.File("FILE", "A brief: which of its statements clash, and what to give up. A routine or notes, with MOVE: why this move and not another. Or - for standard input.");
        var move = new Argument<string?>("MOVE") { Arity = ArgumentArity.ZeroOrOne, Description = "Number of a move of the routine, as an audit says it." };
        CommonOptions.RefuseOptions(move);
        var brief = CommonOptions.Brief("The brief that the routine answers; without it the one in the routine, else defaults.");
        var search = new SearchOptions("For the quick drafts that show what would help", "20", CommonOptions.Out("Writes the explanation into a file instead of printing it."));
        var command = new HouseCommand("explain", "Says in the brief's own words why there is no routine for it and what to give up; or why a move of a routine is as it is.")
        {
            file, move, brief, search.Seed, search.Time, search.Out, search.Json, search.Library,
        };
        command.Example = "generator explain ferry.brief.json";
        command.ExitCodes =
        [
            (ExitCode.Good, "There is a routine for the brief, or the move is explained."),
            (ExitCode.Input, "Something that was given is wrong."),
            (ExitCode.Impossible, "No routine can satisfy the brief: proven."),
            (ExitCode.OutOfTime, "No routine was found in the time given; that proves nothing."),
            ExitCode.BrokenDownHere,
        ];
        command.SetAction(parsed => ExplainRun.Of(desk, search.Read(parsed, new ExplainAsked
        {
            File = parsed.GetValue(file),
            Move = parsed.GetValue(move),
            Brief = parsed.GetValue(brief),
        })));
        return command;
    }
}

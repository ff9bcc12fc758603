using System.CommandLine;
using Generator.Cli.Options;
using Generator.Cli.Work;
using Generator.Library.Files;

namespace Generator.Cli.Commands;

/// <summary><c>generator draft</c>: from a brief to a routine that has passed the audit.</summary>
internal static class DraftCommand
{
    public static Command Of(Desk desk)
    {
        var brief = CommonOptions.File("BRIEF", "The brief as a file, or - for standard input. Without one, and without the next four options, a scenario that comes with the program: a fight on the car deck of a night ferry.");
        var attackers = NumberOption.Whole("--attackers", "N", "Instead of a brief: this many attackers, 1 to 8, everything else by default.", 1, QuickBrief.Most);
        var counts = NumberOption.Whole("--counts", "N", "Instead of a brief: length in counts (48).", 4, 2000);
        var moves = NumberOption.Whole("--moves", "N", "Instead of a brief: number of moves.", 1, 500);
        var scenario = WordOption.Of("--scenario", "NAME", $"Instead of a brief: a scenario that comes with the program: {string.Join("; ", BundledScenario.All.Select(s => $"{s.Name}, {s.About}"))}.", "a scenario", "this program knows", BundledScenario.All, s => s.Name);
        var rounds = NumberOption.Whole("--rounds", "N", "Ends after N rounds of the quick first pass alone, not by the clock: the same brief and seed then give the same routine on every machine.", 1, 100_000);
        var cold = new Option<bool>("--cold") { Description = "Leaves the whole work to CP-SAT, without the quick first pass." };
        var search = new SearchOptions("Another number gives another routine", "10", CommonOptions.Out("Also writes the routine: as CSV when the name ends in .csv, else as JSON."), "How long to go on improving");
        var command = new HouseCommand("draft", "Drafts a routine from a brief. Whatever is shown has passed the audit without anything unsafe or broken.")
        {
            brief, attackers, counts, moves, scenario, search.Seed, search.Time, rounds, cold, search.Out, search.Json, search.Library,
        };
        command.Example = "generator draft ferry.brief.json --seed 7 --out ferry.routine.json";
        command.ExitCodes =
        [
            (ExitCode.Good, "There is a routine."),
            (ExitCode.Input, "Something that was given is wrong."),
            (ExitCode.Impossible, "No routine can satisfy the brief."),
            (ExitCode.OutOfTime, "Time ran out before there was a routine."),
            ExitCode.BrokenDownHere,
        ];
        command.SetAction(parsed => DraftRun.Of(desk, search.Read(parsed, new DraftAsked
        {
            Brief = parsed.GetValue(brief),
            Attackers = parsed.GetValue(attackers),
            Counts = parsed.GetValue(counts),
            Moves = parsed.GetValue(moves),
            Scenario = parsed.GetValue(scenario),
            Rounds = parsed.GetValue(rounds),
            Cold = parsed.GetValue(cold),
        })));
        return command;
    }
}

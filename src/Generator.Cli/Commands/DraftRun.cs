using System.Globalization;
using Generator.Cli.Work;
using Generator.Domain;
using Generator.Library;
using Generator.Library.Files;
using Generator.Paperwork.Json;
using Generator.Paperwork.Text;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;
using Generator.Solver;
using Generator.Solver.Questions;

namespace Generator.Cli.Commands;

/// <summary>The work of <c>generator draft</c>.</summary>
internal static class DraftRun
{
    public static int Of(Desk desk, DraftAsked asked)
    {
        if (asked.Brief is not null && asked.IsQuick)
        {
            throw new RefusedException("generator draft: the brief already says how many attackers, counts and moves.", "Maybe leave out --attackers, --counts and --moves, or change them in the brief.");
        }

        if (asked.Scenario is not null && (asked.Brief is not null || asked.IsQuick))
        {
            throw new RefusedException("generator draft: --scenario names a brief that comes with the program, and another one is given.", "Maybe leave out --scenario, or the file and --attackers, --counts and --moves.");
        }

        if (asked.Cold && asked.Rounds is not null)
        {
            throw new RefusedException("generator draft: --cold leaves out the first pass, whose rounds --rounds counts.", "Maybe leave out one of the two.");
        }

        Outputs.Check(asked.Out);
        var book = Inputs.Book(asked.Library);
        var (brief, isChosen) = BriefOf(asked, book, desk);
        Allies.Refuse("draft", brief, "drafts nothing");
        var options = new DraftOptions { Cold = asked.Cold, Rounds = asked.Rounds };
        options = options with { Seed = asked.Seed ?? options.Seed, Time = asked.Time ?? desk.Patience ?? (asked.Rounds is null ? options.Time : Desk.Untimed) };
        desk.Limit(options.Time);
        var progress = Progress.At(desk);
        var result = progress.Run("Drafting", () => desk.Draft(brief, book, options, new ProgressBoard(progress, desk.Keeper(book)), desk.Stop));
        return result.Status switch
        {
            DraftStatus.Found => Show(desk, asked, book, result, result.Routine!, result.Verdict!),
            DraftStatus.Impossible => Endings.Impossible(desk, result.Clash, result.Reasons, isChosen),
            _ => OutOfTime(desk, asked.Rounds is not null && result.Elapsed < options.Time),
        };
    }

    private static (Brief Brief, bool IsChosen) BriefOf(DraftAsked asked, Book book, Desk desk) => asked switch
    {
        { Brief: { } path } => Inputs.Brief(Inputs.Source(path, desk), book, desk, asked.Seed),
        { IsQuick: true } => (QuickBrief.Of(asked.Attackers, asked.Counts, asked.Moves), false),
        _ => ((asked.Scenario ?? BundledScenario.All[0]).BriefBy(book), false),
    };

    private static int Show(Desk desk, DraftAsked asked, Book book, DraftResult result, Routine routine, Verdict verdict)
    {
        var standing = StandingWords.Of(result.Standing);
        var scene = new Scene(routine.Brief, book);
        routine = StanceNotes.Written(scene, routine);
        var text = asked.Json ? DraftJson.Of(routine, verdict, standing) : Wall(scene, routine, verdict, standing);
        string[] remarks = [Remark(desk, result, standing), LeftOut(asked, routine.Brief, book)];
        return Answers.Show(desk, asked.Out, routine, text, remarks.Where(r => r.Length > 0));
    }

    private static string Wall(Scene scene, Routine routine, Verdict verdict, string standing) =>
        WallSheet.Of(scene, routine, verdict, Replay.Of(scene, routine), standing);

    /// <summary>What the brief itself took out of the library, and where that is listed; nothing without a brief of the user's own.</summary>
    private static string LeftOut(DraftAsked asked, Brief brief, Book book) =>
        asked.Brief is { } path && AvailabilityLines.Short(new Availability(new Scene(brief, book))) is { Length: > 0 } note ? $"{note} See: generator library list --for {path}" : string.Empty;

    private static string Remark(Desk desk, DraftResult result, string standing)
    {
        var bound = result.Standing == Standing.BestFound ? $" (no routine can have fewer than {result.Bound.ToString(CultureInfo.InvariantCulture)})" : string.Empty;
        var again = result.Reproducible ? "The same brief and seed give it again."
            : result.Standing == Standing.BestFound ? $"{(desk.Stop.IsCancellationRequested ? "The search was stopped" : "The clock ended the search")}, so another run may give another."
            : "Another run may give another.";
        return string.Create(CultureInfo.InvariantCulture, $"{standing}, {Words.Points(result.Verdict!.Points)}{bound}, after {result.Elapsed.TotalSeconds:0.0} s. {again}");
    }

    private static int OutOfTime(Desk desk, bool afterRounds)
    {
        var why = desk.Stop.IsCancellationRequested ? "The search was stopped" : afterRounds ? "The rounds were over" : "Time ran out";
        desk.Err.WriteLine($"{why} before there was a routine.");
        desk.Err.WriteLine($"  Maybe give it more with --{(afterRounds ? "rounds" : "time")}, try another --seed, or ask for less in the brief.");
        return ExitCode.OutOfTime;
    }
}

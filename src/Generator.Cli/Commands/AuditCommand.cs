using System.CommandLine;
using Generator.Cli.Changes;
using Generator.Cli.Guides;
using Generator.Cli.Options;
using Generator.Cli.Work;
using Generator.Domain;
using Generator.Library;
using Generator.Library.Files;
using Generator.Library.Files.Notes;
using Generator.Library.Reading;
using Generator.Paperwork.Json;
using Generator.Paperwork.Text;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Solver.Completing;
using Generator.Solver.Diagnosing;

namespace Generator.Cli.Commands;

/// <summary><c>generator audit</c>: everything that the rules have to say about a routine, drafted or written by hand.</summary>
internal static class AuditCommand
{
    public static Command Of(Desk desk)
    {
        var routine = CommonOptions.File("ROUTINE", "The routine as a file: JSON, CSV or notes, any cell open; or - for standard input.");
        var brief = CommonOptions.Brief("The brief it answers; without it the one in the routine, else defaults. It may leave out the length.");
        var explain = new Option<string?>("--explain") { HelpName = "RULE", Description = "Instead of an audit: the help page of a rule, such as reset-window." };
        var output = CommonOptions.Out("Writes the report into a file instead of printing it.");
        var json = CommonOptions.Json();
        var library = CommonOptions.Library();
        var command = new HouseCommand("audit", "Audits a routine: reach, stances, hands, resets, falls, sight and pace.")
        {
            routine, brief, explain, output, json, library,
        };
        command.Example = "generator audit ferry.routine.json";
        command.ExitCodes =
        [
            (ExitCode.Good, "Nothing is unsafe or broken, or all of a sketch can stand."),
            (ExitCode.Forbidden, "Something is unsafe or broken, or something of a sketch must give."),
            (ExitCode.Input, "Something that was given is wrong."),
            (ExitCode.OutOfTime, "Time ran out before a sketch could be filled in."),
        ];
        command.SetAction(parsed => parsed.GetValue(explain) is { } rule
            ? Explain(desk, rule, parsed.GetValue(routine))
            : Run(desk, parsed.GetValue(routine), parsed.GetValue(brief), parsed.GetValue(output), parsed.GetValue(json), parsed.GetValue(library) ?? []));
        return command;
    }

    private static int Run(Desk desk, string? path, string? briefPath, string? output, bool json, IReadOnlyList<string> library)
    {
        Pairs.Check("audit", path, briefPath);
        Outputs.Check(output);
        var book = Inputs.Book(library);
        var source = new Lazy<SourceFile>(() => Inputs.Source(path, desk));
        var brief = Pairs.Brief(briefPath, source, book, desk);
        var given = Pairs.RoutineOrSketch(source.Value, brief, book, desk, "this audit uses");
        var (text, code) = given.Sketch is { } sketch ? OfSketch(desk, sketch, book, json) : OfRoutine(given.Routine!, book, json);
        if (code == ExitCode.OutOfTime)
        {
            return Endings.OutOfTime(desk, "a routine that these notes could become");
        }

        Outputs.Show(desk, output, text, "report");

        return code;
    }

    private static (string Text, int Code) OfRoutine(Routine routine, Book book, bool json)
    {
        var scene = new Scene(routine.Brief, book);
        var verdict = Audit.Of(scene, routine);
        var folds = routine.Brief.Ally is null ? Folds.Of(scene, routine, verdict) : Fold.None(verdict);
        return (json ? AuditJson.Of(verdict, folds) : AuditReport.Of(scene, routine, verdict, folds), verdict.IsClean ? ExitCode.Good : ExitCode.Forbidden);
    }

    private static (string Text, int Code) OfSketch(Desk desk, ReadSketch sketch, Book book, bool json)
    {
        if (Sketches.Fill(sketch, book, desk) is not { } completed)
        {
            return (string.Empty, ExitCode.OutOfTime);
        }

        var scene = new Scene(completed.Routine.Brief, book);
        var text = json ? JsonText.Of(CompleteJson.Given(sketch, completed, scene)) : DiagnosisText.Of(sketch, completed, scene);
        return (text, completed.Gave.Count == 0 ? ExitCode.Good : ExitCode.Forbidden);
    }

    private static int Explain(Desk desk, string rule, string? path)
    {
        if (path is not null)
        {
            throw new RefusedException("generator audit: --explain takes no routine.", "Maybe ask for the page and for the audit in two commands.");
        }

        if (RulePages.Find(rule) is not { } page)
        {
            throw new RefusedException($"generator audit: there is no rule {FieldText.Quote(rule)}.", NearestWords.Maybe(rule, RulePages.Ids, $"Maybe one of these is meant: {string.Join(", ", RulePages.Ids)}."));
        }

        desk.Out.Write(GuideText.Of(page));
        return ExitCode.Good;
    }
}

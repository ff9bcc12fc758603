using System.Globalization;
using Generator.Cli.Changes;
using Generator.Cli.Work;
using Generator.Library;
using Generator.Library.Files;
using Generator.Library.Files.Notes;
using Generator.Library.Reading;
using Generator.Rules;
using Generator.Solver.Completing;

namespace Generator.Cli.Commands;

/// <summary>The work of <c>generator complete</c>.</summary>
internal static class CompleteRun
{
    public static int Of(Desk desk, CompleteAsked asked)
    {
        Outputs.Check(asked.Out);
        if (asked.Sketch is not { } path)
        {
            throw new RefusedException("generator complete: SKETCH is missing.", "Maybe write the name of a file with notes, or - for standard input.");
        }

        var book = Inputs.Book(asked.Library);
        var source = new Lazy<SourceFile>(() => Inputs.Source(path, desk));
        var brief = Pairs.Brief(asked.Brief, source, book, desk, asked.Seed);
        var read = Inputs.Sketch(source.Value, brief, book, desk);
        var options = new CompleteOptions();
        options = options with { Seed = asked.Seed ?? options.Seed, Time = asked.Time ?? desk.Patience ?? options.Time };
        var completed = Sketches.Fill(read, book, desk, options, tell: true);
        return completed is null ? Endings.OutOfTime(desk, "a routine") : Show(desk, asked, read, completed, book);
    }

    private static int Show(Desk desk, CompleteAsked asked, ReadSketch read, Completed completed, Book book)
    {
        var scene = new Scene(completed.Routine.Brief, book);
        var text = asked.Json ? JsonText.Of(CompleteJson.Object(read, completed, scene)) : CompleteText.Of(read, completed, scene);
        var code = Answers.Show(desk, asked.Out, completed.Routine, text, Known(completed));
        return code == ExitCode.Good && completed.Gave.Count > 0 ? ExitCode.Forbidden : code;
    }

    private static string Known(Completed completed) => completed switch
    {
        { Gave.Count: 0 } => "Everything that was said stands.",
        { IsLeast: true } => string.Create(CultureInfo.InvariantCulture, $"{completed.Stands} of {completed.Said} moves stand as written. Proven: in no routine does less give."),
        _ => string.Create(CultureInfo.InvariantCulture, $"{completed.Stands} of {completed.Said} moves stand as written; that is the best found, and no proof that less could not give. Maybe more stands with more --time or another --seed."),
    };
}

using System.Globalization;
using Generator.Cli.Changes;
using Generator.Cli.Work;
using Generator.Domain;
using Generator.Library;
using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Paperwork;
using Generator.Rules.Judging;
using Generator.Solver.Explaining;
using Newtonsoft.Json.Linq;

namespace Generator.Cli.Commands;

/// <summary>The work of <c>generator explain</c>.</summary>
internal static class ExplainRun
{
    public static int Of(Desk desk, ExplainAsked asked)
    {
        Outputs.Check(asked.Out);
        var book = Inputs.Book(asked.Library);
        var given = RoutineOrBrief.Read("explain", asked.File, asked.Brief, book, desk, asked.Seed);
        Allies.Refuse("explain", given.Brief, "explains nothing");
        if (given.Routine is { } routine)
        {
            return Move(desk, asked, routine, book);
        }

        if (asked.Move is { } move)
        {
            throw new RefusedException($"generator explain: a brief has no move {FieldText.Shorten(move)}.", "Maybe give a routine, or leave the number out.");
        }

        var options = new ExplainOptions();
        options = options with { Seed = asked.Seed ?? options.Seed, Time = asked.Time ?? desk.Patience ?? options.Time };
        desk.Limit(options.Time);
        var progress = Progress.At(desk);
        var explanation = progress.Run("Explaining", () => Explain.Of(given.Brief, book, options, progress.Tell, desk.Stop));
        Show(desk, asked, asked.Json ? Json(explanation) : ExplanationText.Of(given.Brief, explanation));
        if (given.IsChosen && explanation.Brief == Answer.Impossible)
        {
            desk.Err.WriteLine(Endings.OnChosenMarks);
        }

        if (!explanation.Complete)
        {
            desk.Err.WriteLine("The search ended early; there may be other clashes and other ways out.\n  Maybe give it more with --time.");
        }

        return explanation.Brief switch
        {
            Answer.Solvable => ExitCode.Good,
            Answer.Impossible => ExitCode.Impossible,
            _ => ExitCode.OutOfTime,
        };
    }

    private static int Move(Desk desk, ExplainAsked asked, Routine routine, Book book)
    {
        var last = routine.Moves.Count.ToString(CultureInfo.InvariantCulture);
        if (asked.Move is not { } text)
        {
            throw new RefusedException("generator explain: MOVE is missing.", $"Maybe add the number of a move, 1 to {last}.");
        }

        if (!int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) || number < 1 || number > routine.Moves.Count)
        {
            throw new RefusedException($"generator explain: there is no move {FieldText.Shorten(text)}.", $"Maybe write a number from 1 to {last}.");
        }

        desk.Limit(Desk.Untimed);
        var explanation = Progress.At(desk).Run("Explaining", () => MoveExplanation.Of(routine, number - 1, book, desk.Stop));
        Show(desk, asked, asked.Json ? Json(explanation) : PaperHead.Of(routine, Audit.Of(explanation.Scene, routine)).Above(ExplanationText.Of(routine, explanation)));
        return ExitCode.Good;
    }

    private static void Show(Desk desk, ExplainAsked asked, string text) => Outputs.Show(desk, asked.Out, text, "explanation");

    private static string Json(BriefExplanation explanation) => JsonText.Of(new JObject
    {
        ["brief"] = EnumWords.Of(explanation.Brief),
        ["proven"] = explanation.Proven,
        ["minimal"] = explanation.Minimal,
        ["complete"] = explanation.Complete,
        ["clashes"] = new JArray(explanation.Clashes.Select(c => new JArray(c))),
        ["giveUps"] = new JArray(explanation.GiveUps.Select(g => new JObject { ["words"] = new JArray(g.Words), ["brief"] = BriefWriter.Object(g.Brief) })),
        ["reasons"] = new JArray(explanation.Reasons),
    });

    private static string Json(MoveExplanation explanation) => JsonText.Of(new JObject
    {
        ["move"] = explanation.Move + 1,
        ["fitting"] = new JArray(explanation.Fitting.Select(f => new JObject { ["technique"] = f.Technique.Id, ["reaction"] = f.Reaction, ["points"] = f.Points })),
        ["excluded"] = new JArray(explanation.Excluded.SelectMany(e => e.Candidates.Select(c => new JObject
        {
            ["rule"] = e.Rule,
            ["technique"] = c.Technique.Id,
            ["at"] = c.Against!.Move,
            ["measured"] = c.Against.Measured,
            ["allowed"] = c.Against.Allowed,
            ["unit"] = c.Against.Unit,
            ["message"] = c.Against.Message,
        }))),
    });
}

using System.Globalization;
using Generator.Cli.Changes;
using Generator.Cli.Work;
using Generator.Domain;
using Generator.Library.Files;
using Generator.Paperwork.Text;
using Generator.Solver.Reworking;
using Generator.Solver.Revising;
using Newtonsoft.Json.Linq;

namespace Generator.Cli.Commands;

/// <summary>The work of <c>generator revise</c>.</summary>
internal static class ReviseRun
{
    public static int Of(Desk desk, ReviseAsked asked)
    {
        Outputs.Check(asked.Out);
        Pairs.Check("revise", asked.Routine, asked.Brief);
        if (asked.Brief is not { } briefPath)
        {
            throw new RefusedException("generator revise: --brief is missing.", "Maybe add --brief and the name of the brief as it is now.");
        }

        var book = Inputs.Book(asked.Library);
        var brief = Inputs.Brief(briefPath, book, desk);
        var routine = Inputs.Routine(asked.Routine, null, book, desk);
        var options = new ReviseOptions();
        var weights = options.Weights;
        options = options with
        {
            Seed = asked.Seed ?? options.Seed,
            Time = asked.Time ?? options.Time,
            Weights = new TeachingWeights { Count = asked.CountCost ?? weights.Count, Technique = asked.TechniqueCost ?? weights.Technique, Order = asked.OrderCost ?? weights.Order },
        };
        desk.Limit(options.Time);
        var result = Revise.Of(routine, brief, book, options, new ChangeProgress(desk.Err, desk.Keep).Report, desk.Stop);
        if (result.Clash.Count > 0)
        {
            return Endings.Impossible(desk, result.Clash);
        }

        return result is { Revised: { } revised, Teaching: { } teaching } ? Show(desk, asked, result, revised, teaching) : Endings.OutOfTime(desk, "a revision");
    }

    private static int Show(Desk desk, ReviseAsked asked, ReviseResult result, Reworked revised, Reteaching teaching)
    {
        var text = asked.Json ? Json(result, revised, teaching) : string.Concat(Lines(result, revised, teaching).Select(l => l + "\n"));
        return Answers.Show(desk, asked.Out, revised.Routine, text, Known(result, revised));
    }

    private static string Known(ReviseResult result, Reworked revised) => revised.Change.IsNothing ? "The routine answers the new brief as it is." : result.SmallerTried
        ? "Smaller changes were tried and were not enough. That is no proof that there is none."
        : string.Create(CultureInfo.InvariantCulture, $"Best found in {result.Elapsed.TotalSeconds:0.0} s; maybe less would do, with more --time.");

    private static IEnumerable<string> Lines(ReviseResult result, Reworked revised, Reteaching teaching) =>
    [
        .. Page.Wrap("Revision: " + revised.Routine.Brief.Title, Page.Width),
        .. Page.Wrap((result.Gone > 0 ? string.Create(CultureInfo.InvariantCulture, $"{result.Gone} moves go with those who are no longer in it. ") : string.Empty) + ChangeLines.Sum(revised), Page.Width),
        Page.Line('='),
        "TO TEACH",
        .. teaching.People.SelectMany(p => Page.Hang("  ", Told(p))),
        string.Empty,
        "REHEARSAL CAN SKIP",
        .. teaching.Unchanged.Count == 0 ? ["  nothing"] : teaching.Unchanged.SelectMany(r => Page.Hang("  ", Told(revised, r))),
        .. revised.Change.IsNothing ? Array.Empty<string>() : [string.Empty, "CHANGES"],
        .. ChangeLines.Of(revised),
        Page.Line('-'),
        string.Create(CultureInfo.InvariantCulture, $"POINTS  {revised.Verdict.Points}. Nothing is unsafe or broken. Cost of teaching {teaching.Cost}."),
    ];

    private static string Told(Relearned person)
    {
        var name = Page.Clean(person.Name);
        if (person is { Moves: 0, Gone: 0, Counts: 0 })
        {
            return $"{name} learns nothing anew";
        }

        IReadOnlyList<string?> parts =
        [
            person.Moves > 0 ? $"relearns {Words.Many(person.Moves, "move")}" : null,
            person.Gone > 0 ? $"forgets {Words.Many(person.Gone, "move")}" : null,
            person.Counts > 0 ? $"has {Words.Many(person.Counts, "move")} at another distance from the one before" : null,
        ];
        return $"{name} {string.Join(", ", parts.OfType<string>())} (cost {person.Cost.ToString(CultureInfo.InvariantCulture)})";
    }

    private static string Told(Reworked revised, UnchangedRun run)
    {
        var (first, last) = (revised.Routine.Moves[run.First], revised.Routine.Moves[run.Last]);
        var moves = run.First == run.Last ? $"move {run.First + 1}" : $"moves {run.First + 1} to {run.Last + 1}";
        var shift = run.Shift == 0 ? "as taught" : $"as taught, but {Words.Span(new HalfCounts(Math.Abs(run.Shift)))} {(run.Shift > 0 ? "later" : "sooner")}";
        return $"{moves} (counts {first.Start.ToCountText()} to {last.Start.ToCountText()}): {shift}";
    }

    private static string Json(ReviseResult result, Reworked revised, Reteaching teaching)
    {
        var answer = ChangeJson.Object(revised, result.SmallerTried ? "smaller tried" : "best found");
        answer["teaching"] = new JArray(teaching.People.Select(p => new JObject { ["name"] = p.Name, ["moves"] = p.Moves, ["gone"] = p.Gone, ["counts"] = p.Counts, ["cost"] = p.Cost }));
        answer["unchanged"] = new JArray(teaching.Unchanged.Select(r => new JObject { ["first"] = r.First + 1, ["last"] = r.Last + 1, ["wasFirst"] = r.WasFirst + 1, ["shiftCounts"] = r.Shift / 2m }));
        return JsonText.Of(answer);
    }
}

using System.Globalization;
using Generator.Cli.Changes;
using Generator.Cli.Work;
using Generator.Domain;
using Generator.Library.Files;
using Generator.Library.Reading;
using Generator.Paperwork.Text;
using Generator.Rules;
using Generator.Solver.Revising;
using Generator.Solver.Reworking;
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
        var taught = new Lazy<SourceFile>(() => Inputs.Source(asked.Routine, desk));
        var (brief, isChosen) = Inputs.Brief(Inputs.Source(briefPath, desk), book, desk, asked.Seed, taught);
        var routine = Pairs.Routine(taught.Value, null, book, desk);
        Allies.Refuse("revise", brief.Ally is null ? routine.Brief : brief, "revises nothing");
        var options = new ReviseOptions();
        var weights = options.Weights;
        options = options with
        {
            Seed = asked.Seed ?? options.Seed,
            Time = asked.Time ?? desk.Patience ?? options.Time,
            Weights = new TeachingWeights { Count = asked.CountCost ?? weights.Count, Technique = asked.TechniqueCost ?? weights.Technique, Order = asked.OrderCost ?? weights.Order },
        };
        desk.Limit(options.Time);
        var progress = Progress.At(desk);
        var result = progress.Run("Revising", () => Revise.Of(routine, brief, book, options, new ChangeProgress(progress, desk.Keeper(book)).Report, desk.Stop));
        if (result.Clash.Count > 0)
        {
            return Endings.Impossible(desk, result.Clash, onChosenMarks: isChosen);
        }

        return result is { Revised: { } revised, Teaching: { } teaching } ? Show(desk, asked, result, routine.Brief, revised.WithStances(), teaching, PhraseNews.Of(new Scene(routine.Brief, book), routine, revised, result.Taken, teaching.Marks)) : Endings.OutOfTime(desk, "a revision");
    }

    private static int Show(Desk desk, ReviseAsked asked, ReviseResult result, Brief taught, Reworked revised, Reteaching teaching, IReadOnlyList<PhraseNews> phrases)
    {
        var text = asked.Json ? Json(result, revised, teaching, phrases) : string.Concat(Lines(result, taught, revised, teaching, phrases).Select(l => l + "\n"));
        return Answers.Show(desk, asked.Out, revised.Routine, text, Known(result, revised));
    }

    private static string Known(ReviseResult result, Reworked revised) => revised.Change.IsNothing ? (result.Gone > 0 ? "What is left answers the new brief as it is." : "The routine answers the new brief as it is.") : result.SmallerTried
        ? "Smaller changes were tried and were not enough. That is no proof that there is none."
        : string.Create(CultureInfo.InvariantCulture, $"Best found in {result.Elapsed.TotalSeconds:0.0} s; maybe less would do, with more --time.");

    private static IEnumerable<string> Lines(ReviseResult result, Brief taught, Reworked revised, Reteaching teaching, IReadOnlyList<PhraseNews> phrases) =>
    [
        .. Page.Wrap("Revision: " + revised.Routine.Brief.Title, Page.Width),
        .. Page.Wrap(Sum(result, revised, teaching.Marks), Page.Width),
        Page.Line('='),
        "TO TEACH",
        .. teaching.People.Select((p, i) => i > 0 && TakesOver(revised, taught, i - 1) is { } part ? Told(p, "does all as taught") + part : Told(p, "learns nothing anew")).SelectMany(l => Page.Hang("  ", l)),
        .. Phrases("REHEARSAL CAN SKIP (phrases and moves as they were taught)", phrases.Where(p => p.IsUnchanged)),
        .. Phrases("TO REHEARSE (phrases and moves as they were taught)", phrases.Where(p => !p.IsUnchanged)),
        .. teaching.Marks.IsNothing ? Array.Empty<string>() : [string.Empty, "ON THE FLOOR (moves as they are now)"],
        .. MarkLines.Of(teaching.Marks, revised),
        .. revised.Change.IsNothing ? Array.Empty<string>() : [string.Empty, "CHANGES"],
        .. ChangeLines.Of(revised, result.Taken),
        Page.Line('-'),
        string.Create(CultureInfo.InvariantCulture, $"POINTS  {revised.Verdict.Points}. Nothing is unsafe or broken. Cost of teaching {teaching.Cost}."),
    ];

    private static string Sum(ReviseResult result, Reworked revised, MarkNews marks)
    {
        var elsewhere = marks.IsNothing ? string.Empty : marks.Ways.Count == 0 ? " What is done stands elsewhere on the floor." : $" {Words.Many(marks.Ways.Count, "way")} on the floor {(marks.Ways.Count == 1 ? "is another" : "are others")}.";
        var gone = result.Gone == 0 ? string.Empty : $"{Words.Many(result.Gone, "move")} {(result.Gone == 1 ? "goes" : "go")} with those who are no longer in it. ";
        return gone + (gone.Length > 0 && revised.Change.IsNothing ? "Nothing else changes." : !marks.IsNothing && revised.Change.IsNothing ? "No move changes." : ChangeLines.Sum(revised)) + elsewhere;
    }

    /// <summary>Whoever is new in a part has to learn all of it, also what stays as it was.</summary>
    private static string? TakesOver(Reworked revised, Brief taught, int attacker)
    {
        var names = revised.Scene.Brief.Attackers.Select(a => a.Name).ToList();
        if (taught.Attackers.Any(a => string.Equals(a.Name, names[attacker], StringComparison.Ordinal)))
        {
            return null;
        }

        var part = $"all {Words.Many(revised.Routine.Moves.Count(m => m.Attacker == attacker), "move")} of the part";
        return attacker < taught.Attackers.Count && !names.Contains(taught.Attackers[attacker].Name)
            ? $"; takes over from {Page.Clean(taught.Attackers[attacker].Name)} and learns {part}"
            : $"; is new and learns {part}";
    }

    private static string Told(Relearned person, string nothing)
    {
        var name = Page.Clean(person.Name);
        if (person is { Moves: 0, Gone: 0, Counts: 0, Ways: 0 })
        {
            return $"{name} {nothing}";
        }

        IReadOnlyList<string?> parts =
        [
            person.Moves > 0 ? $"relearns {Words.Many(person.Moves, "move")}" : null,
            person.Gone > 0 ? $"forgets {Words.Many(person.Gone, "move")}" : null,
            person.Counts > 0 ? $"has {Words.Many(person.Counts, "move")} at another distance from the one before" : null,
            person.Ways > 0 ? $"goes another way in {Words.Many(person.Ways, "move")}" : null,
        ];
        return $"{name} {string.Join(", ", parts.OfType<string>())} (cost {person.Cost.ToString(CultureInfo.InvariantCulture)})";
    }

    private static IEnumerable<string> Phrases(string title, IEnumerable<PhraseNews> phrases) =>
        phrases.SelectMany(p => Page.Hang("  ", p.ToText())).ToList() is { Count: > 0 } lines ? [string.Empty, title, .. lines] : [];

    private static string Json(ReviseResult result, Reworked revised, Reteaching teaching, IReadOnlyList<PhraseNews> phrases)
    {
        var answer = ChangeJson.Object(revised, result.SmallerTried ? "smaller tried" : "best found");
        answer["teaching"] = new JArray(teaching.People.Select(p => new JObject { ["name"] = p.Name, ["moves"] = p.Moves, ["gone"] = p.Gone, ["counts"] = p.Counts, ["ways"] = p.Ways, ["cost"] = p.Cost }));
        answer["marks"] = MarkLines.Json(teaching.Marks, revised.Scene.Brief);
        answer["unchanged"] = new JArray(teaching.Unchanged.Select(r => new JObject { ["first"] = r.First + 1, ["last"] = r.Last + 1, ["wasFirst"] = r.WasFirst + 1, ["shiftCounts"] = r.Shift / 2m }));
        answer["phrases"] = new JArray(phrases.Select(p => new JObject
        {
            ["number"] = p.Phrase.Number,
            ["first"] = p.Phrase.First,
            ["last"] = p.Phrase.Last,
            ["unchanged"] = p.IsUnchanged,
            ["news"] = new JArray(p.News),
        }));
        return JsonText.Of(answer);
    }
}

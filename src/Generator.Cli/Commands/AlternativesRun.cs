using System.Globalization;
using Generator.Cli.Changes;
using Generator.Cli.Options;
using Generator.Cli.Work;
using Generator.Domain;
using Generator.Library.Files;
using Generator.Paperwork.Json;
using Generator.Paperwork.Text;
using Generator.Rules;
using Generator.Rules.Replaying;
using Generator.Solver;
using Generator.Solver.Alternatives;
using Generator.Solver.Reworking;
using Newtonsoft.Json.Linq;

namespace Generator.Cli.Commands;

/// <summary>The work of <c>generator alternatives</c>.</summary>
internal static class AlternativesRun
{
    public static int Of(Desk desk, AlternativesAsked asked)
    {
        if (asked.Out is { } folder && File.Exists(folder))
        {
            throw new RefusedException($"--out {folder}: this is a file, not a folder.", "Maybe name a folder that is not there yet.");
        }

        var book = Inputs.Book(asked.Library);
        var given = RoutineOrBrief.Read("alternatives", asked.File, asked.Brief, book, desk, asked.Seed);
        Allies.Refuse("alternatives", given.Brief, "looks for no alternatives");
        var (brief, locked) = (given.Brief, (IReadOnlyList<LockedStretch>)[]);
        if (given.Routine is { } inHand)
        {
            brief = DraftBrief.Like(inHand, brief, book);
            var kept = KeptMoves.Of(new Scene(brief, book), inHand, [.. asked.Keep.Select(r => r.In(inHand)).Select(r => new LockedStretch(r.First - 1, r.Last - 1, Slip(inHand, r)))]);
            (brief, locked) = (brief with { Moments = kept.Moments }, kept.Locked);
        }
        else if (asked.Keep.Count > 0)
        {
            throw new RefusedException("generator alternatives: --keep needs a routine.", "Maybe give a routine instead of a brief, or write the moment into the brief.");
        }

        if (brief.Length is null)
        {
            brief = brief with { Length = new Length(null, Math.Clamp(given.Routine!.Moves.Count, 1, 500), 1) };
        }

        var options = new AlternativesOptions();
        options = options with
        {
            Number = asked.Number ?? options.Number,
            SharePercent = asked.Differ ?? options.SharePercent,
            Slack = asked.Slack ?? options.Slack,
            Seed = asked.Seed ?? options.Seed,
            Time = asked.Time ?? desk.Patience ?? options.Time,
            Locked = locked,
        };
        var (shown, keep) = (0, desk.Keeper(book));
        desk.Limit(options.Time);
        if (asked.Each)
        {
            return AlternativesEach.Of(desk, brief, book, options, given.Routine, given.IsChosen);
        }

        var progress = Progress.At(desk);
        var result = progress.Run("Looking for alternatives", () => AlternativeSearch.Of(brief, book, options, given.Routine is { } routine ? [routine] : [], Told, desk.Stop));
        return result switch
        {
            { Clash.Count: > 0 } => Endings.Impossible(desk, result.Clash, onChosenMarks: given.IsChosen),
            { Found.Count: 0 } => Endings.OutOfTime(desk, "a routine"),
            _ => Show(desk, asked, options, result),
        };

        void Told(int number, Alternative best)
        {
            keep(best.Routine, best.Verdict.Points);
            if (number > shown)
            {
                shown = number;
                progress.Tell(string.Create(CultureInfo.InvariantCulture, $"{number} of {options.Number}, the best has {Words.Points(best.Verdict.Points)}"));
            }
        }
    }

    /// <summary>Half counts by which moves that are kept may come sooner and later than they do; null for freely.</summary>
    private static (int Sooner, int Later)? Slip(Routine routine, MoveRange range)
    {
        var start = routine.Moves[range.First - 1].Start.Value;
        return range is { Earliest: { } earliest, Latest: { } latest } ? (earliest.Value - start, latest.Value - start) : range.Slip;
    }

    private static int Show(Desk desk, AlternativesAsked asked, AlternativesOptions options, AlternativesResult result)
    {
        result = result with { Found = [.. result.Found.Select(a => a with { Routine = StanceNotes.Written(result.Scene, a.Routine) })] };
        var files = asked.Out is { } folder ? Write(folder, result.Found) : [];
        desk.Out.Write(asked.Json ? Json(result) : AlternativesTable.Of(result.Scene, result.Found));
        foreach (var file in files)
        {
            desk.Err.WriteLine($"Written: {file}");
        }

        var complete = result.Found.Count >= options.Number;
        var why = desk.Stop.IsCancellationRequested ? "Stopped" : "Time ran out";
        desk.Err.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{(complete ? string.Empty : why + ": ")}{result.Found.Count} of {options.Number} alternatives after {result.Elapsed.TotalSeconds:0.0} s, chosen from {result.Seen} routines."));
        if (!complete)
        {
            desk.Err.WriteLine("  Maybe give it more with --time, ask for less --differ, or allow more --slack.");
        }

        return complete ? ExitCode.Good : ExitCode.OutOfTime;
    }

    private static List<string> Write(string folder, IReadOnlyList<Alternative> found)
    {
        try
        {
            Directory.CreateDirectory(folder);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            throw new RefusedException($"--out {folder}: the folder cannot be made.\n  Maybe you may not write there.", error);
        }

        var files = new List<string>();
        foreach (var (alternative, i) in found.Select((a, i) => (a, i)))
        {
            files.Add(Path.Combine(folder, string.Create(CultureInfo.InvariantCulture, $"alternative-{i + 1}.routine.json")));
            Outputs.Write(files[^1], alternative.Routine);
        }

        return files;
    }

    private static string Json(AlternativesResult result) => JsonText.Of(new JObject
    {
        ["alternatives"] = new JArray(result.Found.Select(a => DraftJson.Object(a.Routine, a.Verdict, a.Verdict.Points == 0 ? "perfect" : "best found"))),
        ["differencesPercent"] = new JArray(result.Found.Select(a => new JArray(result.Found.Select(b => Shape.Difference(a.Shape, b.Shape))))),
    });
}

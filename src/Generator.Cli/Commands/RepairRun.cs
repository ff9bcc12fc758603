using System.Diagnostics;
using System.Globalization;
using Generator.Cli.Changes;
using Generator.Cli.Work;
using Generator.Domain;
using Generator.Library.Files;
using Generator.Paperwork.Text;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Solver.Repairing;
using Generator.Solver.Reworking;

namespace Generator.Cli.Commands;

/// <summary>The work of <c>generator repair</c>.</summary>
internal static class RepairRun
{
    public static int Of(Desk desk, RepairAsked asked)
    {
        Outputs.Check(asked.Out);
        Pairs.Check("repair", asked.Routine, asked.Brief);
        var book = Inputs.Book(asked.Library);
        var routine = Pairs.Routine(asked.Routine, asked.Brief, book, desk);
        Allies.Refuse("repair", routine.Brief, "repairs nothing");
        var options = new RepairOptions { Keep = [.. asked.Keep.Select(k => k.In(routine)).Select(k => (k.First - 1, k.Last - 1))] };
        options = options with { Seed = asked.Seed ?? options.Seed, Time = asked.Time ?? desk.Patience ?? options.Time };
        desk.Limit(options.Time);
        var progress = Progress.At(desk);
        var result = progress.Run("Repairing", () => Repair.Of(routine, book, options, new ChangeProgress(progress, desk.Keeper(book)).Report, desk.Stop));
        if (result.Clash.Count > 0)
        {
            return Endings.Impossible(desk, result.Clash);
        }

        return result.Repaired is { } repaired ? Show(desk, asked, result, result.WasClean ? repaired : repaired.WithStances()) : Endings.OutOfTime(desk, "a repair");
    }

    private static int Show(Desk desk, RepairAsked asked, RepairResult result, Reworked repaired)
    {
        var text = asked.Json ? JsonText.Of(ChangeJson.Object(repaired, Standing(result))) : string.Concat(Lines(result, repaired).Select(l => l + "\n"));
        return Answers.Show(desk, asked.Out, repaired.Routine, text, Known(result));
    }

    private static string Standing(RepairResult result) => result switch
    {
        { WasClean: true } => "nothing to repair",
        { FewestProven: true } => "proven fewest",
        { SmallerTried: true } => "smaller tried",
        _ => "best found",
    };

    private static string Known(RepairResult result) => result switch
    {
        { WasClean: true } => "Nothing is unsafe or broken, so nothing changes.",
        { Repaired.Change.Changed: 0 } => "No move has to change; the counts are the fewest found.",
        { FewestProven: true } => "No repair changes fewer moves: as many as change are wrong in themselves, whatever stands around them. The counts are the fewest found.",
        { SmallerTried: true } => "The smallest change found. Fewer were tried before each fault, one after the other, and none of them was enough; that is no proof.",
        _ => string.Create(CultureInfo.InvariantCulture, $"The smallest change found in {result.Elapsed.TotalSeconds:0.0} s. Not everything smaller was tried: maybe fewer moves would do, with more --time."),
    };

    private static IEnumerable<string> Lines(RepairResult result, Reworked repaired)
    {
        var before = Audit.Of(repaired.Scene, repaired.Old);
        IReadOnlyList<Finding> faults = before.Grave;
        return
        [
            .. Page.Wrap("Repair: " + repaired.Routine.Brief.Title, Page.Width),
            .. Page.Wrap(result.WasClean ? "Nothing is unsafe or broken." : ChangeLines.Sum(repaired), Page.Width),
            Page.Line('='),
            .. faults.Count > 0 ? ["WRONG BEFORE"] : Array.Empty<string>(),
            .. faults.SelectMany(f => Page.Hang("  ", $"count {f.Count.ToCountText()}, {(f.Move > 0 ? "move " + f.Move.ToString(CultureInfo.InvariantCulture) : "the whole")}, {f.Rule}: {f.Message}")),
            .. repaired.Change.IsNothing ? [] : new[] { "CHANGES" },
            .. ChangeLines.Of(repaired),
            Page.Line('-'),
            string.Create(CultureInfo.InvariantCulture, $"POINTS  {repaired.Verdict.Points}, {before.Points} before. Nothing is unsafe or broken."),
        ];
    }
}

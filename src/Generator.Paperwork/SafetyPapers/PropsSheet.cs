using Generator.Domain;
using Generator.Paperwork.Text;
using Generator.Rules.Replaying;

namespace Generator.Paperwork.SafetyPapers;

/// <summary>The list of props: what there is and how many, who holds each when, where it lies afterwards, and who checks it before the call.</summary>
public static class PropsSheet
{
    public const string FileName = "props.txt";

    /// <summary>How many of a break-away are made beyond one a run: one in five, and never fewer than two. Common practice, no source.</summary>
    public static int Spares(int runs) => Math.Max(2, (runs + 4) / 5);

    /// <summary>What it says, piece by piece.</summary>
    public static IEnumerable<Block> Blocks(PaperSource source) =>
    [
        Block.Title("Props: " + source.Brief.Title),
        Block.Rule,
        Block.Caution(SafetyCautions.NoClearance),
        Block.Gap,
        .. Enumerable.Range(0, source.Brief.Props.Count).SelectMany(p => Prop(source, p)),
        Block.Heading("After the run"),
        Block.Item("  [ ] ", "Every prop is counted, looked at for cracks and locked away by whoever checks it."),
        .. source.Brief.Props.Any(p => source.Scene.Book.Props.Find(p.Kind) is { Breakaway: true }) ? [Block.Item("  [ ] ", "The floor is swept for splinters before anybody walks on it without shoes.")] : Array.Empty<Block>(),
    ];

    /// <summary>What is looked at before the call, one line a prop.</summary>
    public static IEnumerable<string> Checks(PaperSource source)
    {
        for (var p = 0; p < source.Brief.Props.Count; p++)
        {
            var kind = source.Scene.Book.Props.Find(source.Brief.Props[p].Kind);
            yield return $"Prop: {PropLines.NameOf(source.Scene, p)}, {Opens(source, p)}. {kind?.Check} Checked by {kind?.CheckedBy ?? "the fight captain"}: {Block.Blank}";
        }
    }

    private static IEnumerable<Block> Prop(PaperSource source, int prop)
    {
        var kind = source.Scene.Book.Props.Find(source.Brief.Props[prop].Kind);
        var runs = source.Brief.Safety.Runs;
        yield return Block.Heading(PropLines.NameOf(source.Scene, prop), kind?.Name ?? string.Empty);
        yield return Block.Item("  needed: ", kind is { Breakaway: true } && IsBroken(source, prop)
            ? $"{Words.Number(runs + Spares(runs))} a day: one for each of {Words.Many(runs, "run")} and {Words.Number(Spares(runs))} spare"
            : "1, and one like it for the understudy");
        yield return Block.Item("  before: ", Opens(source, prop));
        foreach (var step in source.Steps.Where(s => Used(source, s, prop) || PropLines.Changed(s).Contains(prop)))
        {
            var done = Used(source, step, prop) ? Words.Low(Done(source, step, prop)) : "let go";
            yield return Block.Item("  " + Words.Tag(step) + " ", $"{done}; then {PropLines.Where(source.Scene, step.After, step.After.Props[prop])}");
        }

        yield return Block.Item("  kept safe: ", kind?.Safety ?? string.Empty);
        yield return Block.Item("  [ ] ", $"{kind?.Check} Checked by {kind?.CheckedBy ?? "the fight captain"}: {Block.Blank}");
        yield return Block.Gap;
    }

    private static string Opens(PaperSource source, int prop)
    {
        if (source.Steps.Count > 0)
        {
            return PropLines.Where(source.Scene, source.Steps[0].Before, source.Steps[0].Before.Props[prop]);
        }

        var open = Replay.Open(source.Scene, source.Routine);
        return PropLines.Where(source.Scene, open, open.Props[prop]);
    }

    private static bool IsBroken(PaperSource source, int prop) => source.Steps.Any(s => s.After.Props[prop].Broken);

    private static bool Used(PaperSource source, Step step, int prop) => Rules.Rules.Prop.Used(source.Scene, step).Any(u => u.Prop == prop);

    private static string Done(PaperSource source, Step step, int prop) => Rules.Rules.Prop.Of(source.Scene, step).First(u => u.Prop == prop).Name;
}

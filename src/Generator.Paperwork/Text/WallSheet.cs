using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;

namespace Generator.Paperwork.Text;

/// <summary>The sheet that hangs on the wall of the rehearsal room: a routine from cast to last count, as plain text of fixed width.</summary>
public static class WallSheet
{
    /// <summary>The whole sheet, ending with a line feed.</summary>
    /// <param name="scene">The brief and the library worked out.</param>
    /// <param name="routine">The routine.</param>
    /// <param name="verdict">What the audit said of it.</param>
    /// <param name="steps">The routine replayed: one step for each move.</param>
    /// <param name="standing">Perfect, proven best or best found; null for a routine that was not drafted.</param>
    /// <exception cref="ArgumentException">The steps are not those of the routine.</exception>
    public static string Of(Scene scene, Routine routine, Verdict verdict, IReadOnlyList<Step> steps, string? standing)
    {
        if (steps.Count != routine.Moves.Count)
        {
            throw new ArgumentException($"There are {Words.Many(steps.Count, "step")} for {Words.Many(routine.Moves.Count, "move")}.", nameof(steps));
        }

        return string.Concat(Lines(scene, routine, verdict, steps, standing).Select(l => l + "\n"));
    }

    private static IEnumerable<string> Lines(Scene scene, Routine routine, Verdict verdict, IReadOnlyList<Step> steps, string? standing) =>
    [
        .. Page.Wrap(routine.Brief.Title, Page.Width),
        .. Page.Wrap(Facts(scene, routine, steps), Page.Width),
        .. PulseWords.Of(routine.Brief.Music).SelectMany(l => Page.Wrap(l, Page.Width)),
        Page.Line('='),
        .. Page.Wrap(Cautions.Sheet, Page.Width),
        string.Empty,
        .. CastLines.Of(scene, routine.Placements),
        .. Page.Hang("  ", Words.Entrances),
        .. Following.LeadIn.Of(scene, steps) is { } early ? Page.Hang("  ", early.Sentence) : [],
        string.Empty,
        .. FloorSketch.Of(routine.Brief, routine.Placements),
        .. routine.Brief.Travels ? Page.Hang("  ", $"Marks: {string.Join("; ", routine.Brief.Marks.Select(m => $"{Page.Clean(m.Name)} ({m.X} towards 3, {m.Y} towards 12)"))}. Bearings and distances are from the mark of the moment.") : [],
        .. PropLines.Lying(scene, routine) is { Count: > 0 } props ? Page.Hang("  ", $"On the floor before the first count: {string.Join("; ", props.Select(p => $"{PropLines.InWords(scene, p.Prop)} {p.At}"))}.") : [],
        string.Empty,
        .. MoveLines.Of(scene, routine, steps),
        .. PointsLines.Of(verdict, standing, scene),
        .. verdict.Findings.Count > 0 ? [string.Empty, "FINDINGS"] : Array.Empty<string>(),
        .. FindingLines.Of(verdict.Findings),
    ];

    private static string Facts(Scene scene, Routine routine, IReadOnlyList<Step> steps)
    {
        var pulse = routine.Brief.Pulse;
        var end = new HalfCounts(PaperSource.EndOf(steps));
        var library = routine.LibraryVersion.Length > 0 ? $"; library {routine.LibraryVersion}" : string.Empty;
        return $"{Words.Many(steps.Count, "move")} in {Words.Span(end)}, {PulseWords.Of(pulse)}, {Words.Number(decimal.Round(pulse.SecondsWithHolds(0, end.Value), 1))} s{(StyleWords.Of(scene) is { } style ? "; style: " + style : string.Empty)}{library}";
    }
}

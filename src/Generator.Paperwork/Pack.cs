using Generator.Paperwork.Cameras;
using Generator.Paperwork.HandOffs;
using Generator.Paperwork.Html;
using Generator.Paperwork.Text;
using Generator.Paperwork.Printing;

namespace Generator.Paperwork;

/// <summary>Everything that is handed out for a routine, in the order in which it is listed.</summary>
public static class Pack
{
    /// <summary>Names of papers that only some runs make, parts and the printed pack aside.</summary>
    public static IReadOnlyList<string> Optional { get; } = [HandOffPapers.CalendarName, HandOffPapers.CameraName, CameraPage.FileName];

    /// <summary>How the names of motion files, one a performer, begin and end.</summary>
    public static (string Prefix, string Ending) MotionName => (SpacePapers.MotionPrefix, SpacePapers.MotionEnding);

    /// <summary>Those of a fight with an ally, each of which says who makes every move and counts what the ally takes; the others would show the hero's part alone, or give it the ally's moves, and are not made.</summary>
    private static readonly string[] WithAlly = ["wall.txt", "risk-assessment.txt", "risk-assessment.html", "fight-call.txt", SafetyPapers.ChangeLog.FileName, "moves.csv", "tracks.csv", "routine.xlsx", "click.mid", "click.wav"];

    /// <summary>Names of the papers that are not made of a routine, since they cannot show the ally yet; none without one.</summary>
    public static IReadOnlyList<string> LeftOut(PaperSource source) => source.Brief.Ally is null ? [] : [.. All(source).Select(p => p.FileName).Concat([HandOffPapers.CameraName, CameraPage.FileName]).Distinct(StringComparer.Ordinal).Where(f => !WithAlly.Contains(f, StringComparer.Ordinal))];

    /// <summary>The papers of a routine; no two have the same file name, whatever the case of its letters.</summary>
    public static IReadOnlyList<IPaper> Of(PaperSource source) => source.Brief.Ally is null ? All(source) : [.. All(source).Where(p => WithAlly.Contains(p.FileName, StringComparer.Ordinal))];

    private static IReadOnlyList<IPaper> All(PaperSource source) =>
    [
        .. HtmlPapers.Of(source),
        new TextPaper(PosterPage.FileName, "the wall of the rehearsal room, to be read from 2 m", s => PosterPage.Of(s, PosterSize.Of(s.Options.Page)[0])),
        new SheetPaper("wall.txt", "the same with every detail, as plain text", s => [Block.Typed(WallSheet.Of(s.Scene, s.Routine, s.Verdict, s.Steps, null))]),
        .. HandOffPapers.Of(source),
        .. SpacePapers.Of(source),
    ];
}

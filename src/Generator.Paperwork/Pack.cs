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

    /// <summary>The papers of a routine; no two have the same file name, whatever the case of its letters.</summary>
    public static IReadOnlyList<IPaper> Of(PaperSource source) =>
    [
        .. HtmlPapers.Of(source),
        new TextPaper(PosterPage.FileName, "the wall of the rehearsal room, to be read from 2 m", s => PosterPage.Of(s, PosterSize.Of(s.Options.Page)[0])),
        new SheetPaper("wall.txt", "the same with every detail, as plain text", s => [Block.Typed(WallSheet.Of(s.Scene, s.Routine, s.Verdict, s.Steps, null))]),
        .. HandOffPapers.Of(source),
        .. SpacePapers.Of(source),
    ];
}

using Generator.Paperwork.HandOffs;
using Generator.Paperwork.Html;
using Generator.Paperwork.Text;

namespace Generator.Paperwork;

/// <summary>Everything that is handed out for a routine, in the order in which it is listed.</summary>
public static class Pack
{
    /// <summary>Names of papers that only some runs make, parts and the printed pack aside.</summary>
    public static IReadOnlyList<string> Optional { get; } = [HandOffPapers.CalendarName, HandOffPapers.CameraName];

    /// <summary>The papers of a routine; no two have the same file name, whatever the case of its letters.</summary>
    public static IReadOnlyList<IPaper> Of(PaperSource source) =>
    [
        .. HtmlPapers.Of(source),
        new SheetPaper("wall.txt", "the wall of the rehearsal room", s => WallSheet.Of(s.Scene, s.Routine, s.Verdict, s.Steps, null)),
        .. HandOffPapers.Of(source),
    ];
}

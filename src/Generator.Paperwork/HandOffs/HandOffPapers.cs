using Generator.Paperwork.Cameras;
using Generator.Paperwork.SafetyPapers;
using Generator.Paperwork.Shaping;
using Generator.Paperwork.Teaching;
using Generator.Paperwork.Text;

namespace Generator.Paperwork.HandOffs;

/// <summary>The papers for those who teach, film, insure and cut the fight.</summary>
internal static class HandOffPapers
{
    public const string CalendarName = "rehearsals.ics";

    public const string CameraName = "camera-plan.txt";

    public static IEnumerable<IPaper> Of(PaperSource source)
    {
        yield return new SheetPaper("teaching-plan.txt", "whoever teaches the fight: phrases, speeds, repeats, days", Teaching);
        if (source.Options.From is { } from)
        {
            yield return new TextPaper(CalendarName, "everybody's calendar: the rehearsal days", s => RehearsalCalendar.Of(s.Head, s.Brief.Pulse, s.Plan, from, s.Options.Calendar));
        }

        if (source.Options.Cameras is { } cameras)
        {
            yield return new SheetPaper(CameraName, "director and camera crew: which hits sell to which camera", s => CameraSheet.Blocks(s.Scene, cameras));
            yield return new TextPaper(CameraPage.FileName, "the same as pictures: a plan, and what each camera sees of every hit", s => CameraPage.Of(s, cameras));
        }

        yield return new SheetPaper("risk-assessment.txt", "the fight coordinator: hazards, who, controls, in five steps", s => [Block.Typed(RiskSheet.Of(s, s.Hazards))]);
        yield return new TextPaper("risk-assessment.html", "the same to read on a screen or to print", s => RiskPage.Of(s, s.Hazards));
        yield return new SheetPaper("fight-call.txt", "the fight captain: what is checked and run before every performance", s => FightCallSheet.Blocks(s, s.Hazards));
        if (source.Brief.Props.Count > 0)
        {
            yield return new SheetPaper(PropsSheet.FileName, "props, wardrobe and whoever checks them: who holds what when, where it lies afterwards, how many are needed", PropsSheet.Blocks);
        }

        yield return new TextPaper(ChangeLog.FileName, "everybody: sign-offs, and what has changed since", s => ChangeLog.Next(s.Routine, s.Options.ChangeLog, s.Head));
        yield return new SheetPaper("cue-list.txt", "sound, light and camera: cues, knaps and falls with timecode", Cues);
        yield return new SheetPaper("shape.txt", "whoever directs the fight: how it runs, and what would lift it", s => ShapeSheet.Blocks(s.Shape));
        yield return new TextPaper("shape.svg", "the same as a picture", s => ShapePicture.Of(s.Shape, s.Head));
        yield return new TextPaper("moves.csv", "spreadsheets: every move", s => Moves(s).WithCaution().ToCsv());
        yield return new TextPaper("tracks.csv", "spreadsheets: what each performer does and when", s => Tracks(s).WithCaution().ToCsv());
        yield return new BytesPaper("routine.xlsx", "spreadsheets: moves, tracks, and the routine to edit in one workbook", s => Workbook.Of(s.Head, Moves(s).WithCaution(), Tracks(s).WithCaution(), RoutineSheet.Of(s.Routine, s.Head)));
        yield return new BytesPaper("click.mid", "musicians: the click, with a marker for every phrase", s => MidiClick.Of(Named(s.Head), s.Brief.Pulse, s.End, Marker.Of(s.Steps, s.Phrases)));
        yield return new BytesPaper("click.wav", "the rehearsal room's loudspeaker: the same click as sound", s => WavClick.Of(Named(s.Head), s.Brief.Pulse, s.End, Marker.Of(s.Steps, s.Phrases)));
    }

    private static string Named(PaperHead head) => $"{head.Title}; {head.Identity}{(head.Warning is null ? string.Empty : ". " + head.Warning)}";

    private static IEnumerable<Block> Cues(PaperSource source) =>
        CueList.Blocks(source.Brief.Title, CueList.Of(source.Scene, source.Routine, source.Steps, source.Phrases), source.Brief.Pulse, source.Options.Frames);

    private static Table Moves(PaperSource source) => MoveTable.Of(source.Scene, source.Routine, source.Steps, source.Phrases).Under(source.Head);

    private static Table Tracks(PaperSource source) => TrackTable.Of(source.Scene, source.Routine, source.Steps).Under(source.Head);

    private static IEnumerable<Block> Teaching(PaperSource source) => TeachingSheet.Blocks(source.Scene, source.Steps, source.Plan, source.Options.From);
}

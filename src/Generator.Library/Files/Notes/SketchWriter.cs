using System.Globalization;
using System.Text;
using Generator.Domain;
using Generator.Domain.Edits;
using Generator.Domain.Sketches;
using Generator.Library.Files;
using Generator.Library.Reading;
using Newtonsoft.Json.Linq;

namespace Generator.Library.Files.Notes;

/// <summary>
/// Writes sketches as JSON or as CSV. What is open is written as <c>?</c> and what must stay with <c>!</c> behind it, so that no reader takes a sketch for a whole routine.
/// </summary>
public static class SketchWriter
{
    /// <summary>The text of a JSON file.</summary>
    public static string Text(Sketch sketch) => JsonText.Of(BriefWriter.Fields(
        ("brief", BriefWriter.Object(sketch.Brief)),
        ("attackers", new JArray(sketch.Placements.Select((p, i) => BriefWriter.Fields(
            ("name", sketch.Brief.Attackers[i].Name),
            ("bearing", p is null ? null : BriefWriter.Clock(p.Bearing)),
            ("distance", p is null ? null : BriefWriter.Metres(p.Distance)),
            ("entrance", p is null ? null : BriefWriter.Count(p.Entrance)))))),
        ("moves", new JArray(sketch.Moves.Select(m => Row(sketch.Brief, m))))));

    /// <summary>The table with its header.</summary>
    public static string Csv(Sketch sketch)
    {
        var text = new StringBuilder();
        var columns = RoutineTable.ColumnsOf(sketch.Brief, sketch.Moves.Any(m => m.Hurts is not null));
        CsvText.Append(text, columns);
        foreach (var row in RoutineTable.Openings(sketch.Brief, sketch.Placements).Concat(sketch.Moves.Select(m => Row(sketch.Brief, m))).Concat(BriefColumns.Rows(sketch.Brief)))
        {
            CsvText.Append(text, columns.Select(c => row[c] is JValue value ? RoutineWriter.Cell(value) : string.Empty));
        }

        return text.ToString();
    }

    /// <summary>What is to stand in a cell, as its writer would type it; empty for an open one.</summary>
    public static string Typed(Sketch sketch, SketchMove move, Column column) => column switch
    {
        Column.Count => move.Count is { } count ? Range(count) : string.Empty,
        Column.Attacker => move.Attacker is { } attacker ? sketch.Brief.Attackers[attacker].Name : string.Empty,
        Column.By => sketch.Brief.Ally is { } ally ? move.ByAlly ? ally.Part.Name : sketch.Brief.Hero.Name : string.Empty,
        Column.From => move.From?.ToClockText() ?? string.Empty,
        Column.Cue => move.Cue == Cue.None ? string.Empty : EnumWords.Of(move.Cue),
        Column.Attack => move.FollowsUp ? RowNotes.None : Typed(move.Attack),
        Column.Technique => Technique(move),
        Column.Reaction => Typed(move.Reaction),
        Column.Hurts => move.Hurts?.Text ?? string.Empty,
        Column.To => move.To is { } to ? sketch.Brief.Marks[to].Name : string.Empty,
        Column.Stance => move.Stance is { } stance ? EnumWords.Of(stance) : string.Empty,
        Column.Linger => move.Linger == HalfCounts.Zero ? string.Empty : RoutineWriter.Cell(BriefWriter.Span(move.Linger)),
        Column.Note => move.Note,
        _ => throw new ArgumentOutOfRangeException(nameof(column)),
    };

    private static JObject Row(Brief brief, SketchMove move) => move.IsGap ? BriefWriter.Fields(("technique", Technique(move))) : BriefWriter.Fields(
        ("count", move.Count is { } count ? Range(count) : RowNotes.Open),
        RoutineWriter.By(brief, move.ByAlly),
        ("attacker", move.Attacker is { } attacker ? brief.Attackers[attacker].Name : null),
        ("from", move.From?.ToClockText()),
        ("cue", move.Cue == Cue.None ? null : EnumWords.Of(move.Cue)),
        ("attack", move.FollowsUp ? RowNotes.None : Said(move.Attack)),
        ("technique", move.IsSuffered ? RowNotes.None : Said(move.Technique)),
        ("reaction", Said(move.Reaction)),
        (HurtWords.Hurts, move.Hurts?.Text),
        (MarkWords.To, move.To is { } to ? brief.Marks[to].Name : null),
        ("stance", move.Stance is { } stance ? EnumWords.Of(stance) : null),
        ("linger", move.Linger == HalfCounts.Zero ? null : BriefWriter.Span(move.Linger)),
        ("note", move.Note.Length == 0 ? null : move.Note));

    private static string Said(SketchCell? cell) => cell is null ? RowNotes.Open : Typed(cell);

    private static string Technique(SketchMove move) =>
        move.IsGap ? move.Open == Sketch.OpenMoves ? "..." : "... " + move.Open.ToString(CultureInfo.InvariantCulture) : move.IsSuffered ? RowNotes.None : Typed(move.Technique);

    private static string Typed(SketchCell? cell) => cell is null ? string.Empty : (cell is { Ids: [var only], Foot: null } ? only : cell.Text) + cell.Firmness switch
    {
        Firmness.Fixed => "!",
        Firmness.Wish => "?",
        _ => string.Empty,
    };

    private static string Range((HalfCounts First, HalfCounts Last) count) => count.First == count.Last ? count.First.ToCountText() : $"{count.First.ToCountText()}-{count.Last.ToCountText()}";
}

using System.Globalization;
using System.Text;
using Generator.Domain;
using Generator.Library.Reading;
using Newtonsoft.Json.Linq;

namespace Generator.Library.Files;

/// <summary>
/// Writes routines as JSON or as CSV, whole. Reading gives the same routine.
/// </summary>
public static class RoutineWriter
{
    /// <summary>The text of a <c>.routine.json</c> file.</summary>
    public static string Text(Routine routine) => JsonText.Of(Object(routine));

    /// <summary>The routine as it stands inside the answer of a command.</summary>
    public static JObject Object(Routine routine) => BriefWriter.Fields(
        ("brief", BriefWriter.Object(routine.Brief)),
        ("library", routine.LibraryVersion.Length > 0 ? routine.LibraryVersion : null),
        ("attackers", new JArray(routine.Placements.Select((p, i) => BriefWriter.Fields(
            ("name", routine.Brief.Attackers[i].Name),
            ("bearing", BriefWriter.Clock(p.Bearing)),
            ("distance", BriefWriter.Metres(p.Distance)),
            ("entrance", BriefWriter.Count(p.Entrance)))))),
        ("moves", new JArray(routine.Moves.Select(m => Row(routine.Brief, m)))));

    /// <summary>The table with its header, as RFC 4180 has it; text that a spreadsheet would run as a formula is made harmless.</summary>
    public static string Csv(Routine routine)
    {
        var text = new StringBuilder();
        CsvText.Append(text, RoutineTable.ColumnsOf(routine));
        foreach (var row in RoutineTable.Rows(routine))
        {
            CsvText.Append(text, row.Select(v => v is { } value ? Cell(value) : string.Empty));
        }

        return text.ToString();
    }

    /// <summary>A move by the names of its fields.</summary>
    internal static JObject Row(Brief brief, Move move) => BriefWriter.Fields(
        ("count", BriefWriter.Count(move.Start)),
        By(brief, move.ByAlly),
        ("attacker", move.Attacker is { } attacker ? brief.Attackers[attacker].Name : null),
        ("from", move.From?.ToClockText()),
        ("cue", move.Cue == Cue.None ? null : EnumWords.Of(move.Cue)),
        ("attack", move.Attack),
        ("technique", move.Technique),
        ("reaction", move.Reaction),
        (HurtWords.Hurts, move.Hurts?.Text),
        (MarkWords.To, move.To is { } to ? brief.Marks[to].Name : null),
        ("stance", move.Stance is { } stance ? EnumWords.Of(stance) : null),
        ("linger", move.Linger == HalfCounts.Zero ? null : BriefWriter.Span(move.Linger)),
        ("note", move.Note.Length == 0 ? null : move.Note));

    /// <summary>Who does a move; nothing where there is nobody but the hero.</summary>
    internal static (string Name, JToken? Value) By(Brief brief, bool byAlly) => (ActorWords.By, brief.Ally is { } ally ? (byAlly ? ally.Part : brief.Hero).Name : null);

    internal static string Cell(JValue value) => value.Value is string text ? CsvText.Harmless(text) : value.ToString("0.##", CultureInfo.InvariantCulture);
}

using System.Text;
using Generator.Domain;
using Generator.Library.Reading;
using Newtonsoft.Json.Linq;

namespace Generator.Library.Files;

/// <summary>Writes routines as JSON, whole, or as CSV, the rows alone. Reading gives the same routine (CSV: the same moves, with the same brief).</summary>
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

    /// <summary>The rows with their header, as RFC 4180 has them.</summary>
    public static string Csv(Routine routine)
    {
        var text = new StringBuilder();
        CsvText.Append(text, RoutineRow.Fields);
        foreach (var row in routine.Moves.Select(m => Row(routine.Brief, m)))
        {
            CsvText.Append(text, RoutineRow.Fields.Select(f => row[f] is { } value ? Cell(value) : string.Empty));
        }

        return text.ToString();
    }

    private static string Cell(JToken value) => ((JValue)value).ToString("0.#", System.Globalization.CultureInfo.InvariantCulture);

    private static JObject Row(Brief brief, Move move) => BriefWriter.Fields(
        ("count", BriefWriter.Count(move.Start)),
        ("attacker", move.Attacker is { } attacker ? brief.Attackers[attacker].Name : null),
        ("from", move.From?.ToClockText()),
        ("cue", move.Cue == Cue.None ? null : EnumWords.Of(move.Cue)),
        ("attack", move.Attack),
        ("technique", move.Technique),
        ("reaction", move.Reaction),
        ("linger", move.Linger == HalfCounts.Zero ? null : BriefWriter.Span(move.Linger)),
        ("note", move.Note.Length == 0 ? null : move.Note));
}

using Generator.Domain;
using Newtonsoft.Json.Linq;

namespace Generator.Library.Files;

/// <summary>
/// A routine as a table for spreadsheets: first a row for each attacker, in their order, with the opening place alone, then a row for each move, then one for
/// each thing that the brief says.
/// </summary>
public static class RoutineTable
{
    /// <summary>The names of the columns.</summary>
    public static IReadOnlyList<string> Columns { get; } = [.. RoutineRow.Fields, .. OpeningColumns.All, .. BriefColumns.All];

    /// <summary>Those that a fight under a brief has: without marks nobody goes to one, without an ally the hero does everything.</summary>
    public static IReadOnlyList<string> ColumnsOf(Brief brief) => [.. Columns.Where(c => c switch { MarkWords.To => brief.Travels, ActorWords.By => brief.Ally is not null, _ => true })];

    /// <summary>The name of a column that says of a routine that it must not be performed, for whoever reads the table; it is passed over, since what is wrong is found anew.</summary>
    public const string Warning = "warning";

    /// <summary>The rows, a cell for each column: text, a number, or null.</summary>
    public static IEnumerable<IReadOnlyList<JValue?>> Rows(Routine routine) =>
        Openings(routine.Brief, routine.Placements)
            .Concat(routine.Moves.Select(m => RoutineWriter.Row(routine.Brief, m)))
            .Concat(BriefColumns.Rows(routine.Brief, routine.LibraryVersion))
            .Select(IReadOnlyList<JValue?> (row) => [.. ColumnsOf(routine.Brief).Select(c => (JValue?)row[c])]);

    /// <summary>A row for each attacker whose opening place is said.</summary>
    internal static IEnumerable<JObject> Openings(Brief brief, IEnumerable<Placement?> placements) =>
        placements.Select((p, i) => p is null ? null : Opening(brief.Attackers[i].Name, p)).OfType<JObject>();

    private static JObject Opening(string name, Placement placement) => BriefWriter.Fields(
        ("attacker", name),
        (OpeningColumns.Bearing, BriefWriter.Clock(placement.Bearing)),
        (OpeningColumns.Distance, BriefWriter.Metres(placement.Distance)),
        (OpeningColumns.Entrance, BriefWriter.Count(placement.Entrance)));
}

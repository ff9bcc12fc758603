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

    /// <summary>The fields of a move of one hero on one mark that hurts nobody, which most are.</summary>
    internal static IReadOnlyList<string> UsualFields { get; } = [.. RoutineRow.Fields.Where(f => f is not (MarkWords.To or HurtWords.Hurts or ActorWords.By))];

    /// <summary>Those that a fight has: without marks nobody goes to one, without an ally the hero does everything, and mostly nothing hurts.</summary>
    /// <param name="brief">Its brief.</param>
    /// <param name="hurts">Some move hurts somebody.</param>
    public static IReadOnlyList<string> ColumnsOf(Brief brief, bool hurts) =>
        [.. Columns.Where(c => c switch { MarkWords.To => brief.Travels, ActorWords.By => brief.Ally is not null, HurtWords.Hurts => hurts, _ => true })];

    /// <summary>Those of a routine.</summary>
    public static IReadOnlyList<string> ColumnsOf(Routine routine) => ColumnsOf(routine.Brief, routine.Moves.Any(m => m.Hurts is not null));

    /// <summary>The name of a column that says of a routine that it must not be performed, for whoever reads the table; it is passed over, since what is wrong is found anew.</summary>
    public const string Warning = "warning";

    /// <summary>The rows, a cell for each column: text, a number, or null.</summary>
    public static IEnumerable<IReadOnlyList<JValue?>> Rows(Routine routine)
    {
        var columns = ColumnsOf(routine);
        return Openings(routine.Brief, routine.Placements)
            .Concat(routine.Moves.Select(m => RoutineWriter.Row(routine.Brief, m)))
            .Concat(BriefColumns.Rows(routine.Brief, routine.LibraryVersion))
            .Select(IReadOnlyList<JValue?> (row) => [.. columns.Select(c => (JValue?)row[c])]);
    }

    /// <summary>A row for each attacker whose opening place is said.</summary>
    internal static IEnumerable<JObject> Openings(Brief brief, IEnumerable<Placement?> placements) =>
        placements.Select((p, i) => p is null ? null : Opening(brief.Attackers[i].Name, p)).OfType<JObject>();

    private static JObject Opening(string name, Placement placement) => BriefWriter.Fields(
        ("attacker", name),
        (OpeningColumns.Bearing, BriefWriter.Clock(placement.Bearing)),
        (OpeningColumns.Distance, BriefWriter.Metres(placement.Distance)),
        (OpeningColumns.Entrance, BriefWriter.Count(placement.Entrance)));
}

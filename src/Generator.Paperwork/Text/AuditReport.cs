using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;

namespace Generator.Paperwork.Text;

/// <summary>What an audit found, as plain text of fixed width.</summary>
public static class AuditReport
{
    /// <summary>The whole report, ending with a line feed.</summary>
    public static string Of(Scene scene, Routine routine, Verdict verdict) => PaperHead.Of(routine, verdict).Above(string.Concat(Lines(scene, routine, verdict).Select(l => l + "\n")));

    private static IEnumerable<string> Lines(Scene scene, Routine routine, Verdict verdict) =>
    [
        .. Page.Wrap("Audit: " + routine.Brief.Title, Page.Width),
        .. Page.Wrap($"{Words.Many(routine.Moves.Count, "move")} against {Words.Many(scene.Cast, "attacker")}: {Sum(verdict)}.", Page.Width),
        Page.Line('='),
        .. FindingLines.Of(verdict.Findings),
        .. verdict.Findings.Count > 0 ? [Page.Line('-')] : Array.Empty<string>(),
        .. PointsLines.Of(verdict, standing: null, scene),
        string.Empty,
        .. Page.Wrap(Cautions.Audit, Page.Width),
    ];

    private static string Sum(Verdict verdict)
    {
        var parts = Enum.GetValues<Severity>().Reverse()
            .Select(s => (Severity: s, Number: verdict.Findings.Count(f => f.Severity == s)))
            .Where(p => p.Number > 0)
            .Select(p => $"{Words.Number(p.Number)} {Words.Of(p.Severity)}");
        return string.Join(", ", parts) is { Length: > 0 } sum ? sum : "nothing to report";
    }
}

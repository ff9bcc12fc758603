using Generator.Domain;
using Generator.Rules;
using Generator.Rules.Judging;

namespace Generator.Paperwork.Text;

/// <summary>What an audit found, as plain text of fixed width.</summary>
public static class AuditReport
{
    /// <summary>The whole report, ending with a line feed.</summary>
    /// <param name="scene">Brief and library.</param>
    /// <param name="routine">The routine.</param>
    /// <param name="verdict">What the audit says of it.</param>
    /// <param name="folds">Its findings, those under others that vanish with them.</param>
    public static string Of(Scene scene, Routine routine, Verdict verdict, IReadOnlyList<Fold> folds) =>
        PaperHead.Of(routine, verdict).Above(string.Concat(Lines(scene, routine, verdict, folds).Select(l => l + "\n")));

    private static IEnumerable<string> Lines(Scene scene, Routine routine, Verdict verdict, IReadOnlyList<Fold> folds) =>
    [
        .. Page.Wrap("Audit: " + routine.Brief.Title, Page.Width),
        .. Page.Wrap($"{Words.Many(routine.Moves.Count, "move")} against {Words.Many(scene.Cast, "attacker")}{(scene.Brief.Ally is { } ally ? $", by {Page.Clean(scene.Brief.Hero.Name)} and {Page.Clean(ally.Part.Name)}" : string.Empty)}: {Sum(verdict)}{Headings(folds)}.", Page.Width),
        Page.Line('='),
        .. FindingLines.Of(folds),
        .. verdict.Findings.Count > 0 ? [Page.Line('-')] : Array.Empty<string>(),
        .. PointsLines.Of(verdict, standing: null, scene),
        string.Empty,
        .. Page.Wrap(Cautions.Audit, Page.Width),
    ];

    private static string Headings(IReadOnlyList<Fold> folds) => folds.Sum(f => f.Folded.Count) is > 0 and var folded
        ? $", {Words.Number(folded)} of them under others with which {(folded == 1 ? "it goes" : "they go")}" : string.Empty;

    private static string Sum(Verdict verdict)
    {
        var parts = Enum.GetValues<Severity>().Reverse()
            .Select(s => (Severity: s, Number: verdict.Findings.Count(f => f.Severity == s)))
            .Where(p => p.Number > 0)
            .Select(p => $"{Words.Number(p.Number)} {Words.Of(p.Severity)}");
        return string.Join(", ", parts) is { Length: > 0 } sum ? sum : "nothing to report";
    }
}

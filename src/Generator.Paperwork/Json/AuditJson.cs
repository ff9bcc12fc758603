using Generator.Library.Files;
using Generator.Rules.Judging;
using Newtonsoft.Json.Linq;

namespace Generator.Paperwork.Json;

/// <summary>What an audit found, for other programs: <c>{ "findings": […], "points": n }</c>.</summary>
public static class AuditJson
{
    /// <summary>JSON text, ending with a line feed. A finding that vanishes with another one says <c>under</c> which, as its position in the list from 0, and that one how it was <c>mended</c>.</summary>
    public static string Of(Verdict verdict, IReadOnlyList<Fold> folds)
    {
        var all = verdict.Findings.ToList();
        var findings = FindingJson.List(all);
        foreach (var fold in folds.Where(f => f.Mend.Length > 0))
        {
            var heading = all.IndexOf(fold.Finding);
            findings[heading]["mended"] = fold.Mend;
            foreach (var folded in fold.Folded)
            {
                findings[all.IndexOf(folded)]["under"] = heading;
            }
        }

        return JsonText.Of(new JObject { ["findings"] = findings, ["points"] = verdict.Points });
    }
}

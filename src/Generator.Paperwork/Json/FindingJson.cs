using Generator.Domain;
using Generator.Library.Reading;
using Newtonsoft.Json.Linq;

namespace Generator.Paperwork.Json;

/// <summary>Findings for other programs.</summary>
internal static class FindingJson
{
    public static JArray List(IReadOnlyList<Finding> findings) => new(findings.Select(Of));

    /// <summary>Every member is always there; <c>move</c> is 0 for the routine as a whole, measured and allowed are null where nothing is measured.</summary>
    private static JObject Of(Finding finding) => new()
    {
        ["rule"] = finding.Rule,
        ["severity"] = EnumWords.Of(finding.Severity),
        ["move"] = finding.Move,
        ["count"] = finding.Count.ToCountText(),
        ["who"] = finding.Who,
        ["measured"] = finding.Measured,
        ["allowed"] = finding.Allowed,
        ["unit"] = finding.Unit,
        ["points"] = finding.Points,
        ["message"] = finding.Message,
    };
}

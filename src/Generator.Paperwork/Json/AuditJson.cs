using Generator.Library.Files;
using Generator.Rules.Judging;
using Newtonsoft.Json.Linq;

namespace Generator.Paperwork.Json;

/// <summary>What an audit found, for other programs: <c>{ "findings": […], "points": n }</c>.</summary>
public static class AuditJson
{
    /// <summary>JSON text, ending with a line feed.</summary>
    public static string Of(Verdict verdict) => JsonText.Of(new JObject { ["findings"] = FindingJson.List(verdict.Findings), ["points"] = verdict.Points });
}

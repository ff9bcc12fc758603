using Generator.Domain;
using Generator.Library.Files;
using Generator.Rules.Judging;
using Newtonsoft.Json.Linq;

namespace Generator.Paperwork.Json;

/// <summary>A draft for other programs: <c>{ "routine": {…}, "findings": […], "points": n, "standing": "…" }</c>. It can be audited as it is.</summary>
public static class DraftJson
{
    /// <summary>JSON text, ending with a line feed.</summary>
    /// <param name="routine">The routine.</param>
    /// <param name="verdict">What the audit said of it.</param>
    /// <param name="standing">Perfect, proven best or best found.</param>
    public static string Of(Routine routine, Verdict verdict, string standing) => JsonText.Of(Object(routine, verdict, standing));

    /// <summary>The same as an object, for answers that say more.</summary>
    public static JObject Object(Routine routine, Verdict verdict, string standing) => new()
    {
        ["routine"] = RoutineWriter.Object(routine),
        ["findings"] = FindingJson.List(verdict.Findings),
        ["points"] = verdict.Points,
        ["standing"] = standing,
    };
}

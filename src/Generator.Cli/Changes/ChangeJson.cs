using System.Globalization;
using Generator.Paperwork.Json;
using Generator.Solver.Reworking;
using Newtonsoft.Json.Linq;

namespace Generator.Cli.Changes;

/// <summary>A changed routine for other programs: the routine as a draft has it, and what became of every move.</summary>
internal static class ChangeJson
{
    /// <param name="reworked">The change.</param>
    /// <param name="standing">What is known of it.</param>
    public static JObject Object(Reworked reworked, string standing)
    {
        var answer = DraftJson.Object(reworked.Routine, reworked.Verdict, standing);
        answer["changed"] = reworked.Change.Changed;
        answer["shiftedCounts"] = reworked.Change.Shift / 2m;
        answer["changes"] = new JArray(reworked.Change.Moves.Where(m => m.Kind != ChangeKind.Kept).Select(m => new JObject
        {
            ["kind"] = m.Kind.ToString().ToLower(CultureInfo.InvariantCulture),
            ["was"] = m.Old < 0 ? null : m.Old + 1,
            ["now"] = m.Now < 0 ? null : m.Now + 1,
        }));
        return answer;
    }
}

using Generator.Library.Files.Notes;
using Generator.Paperwork.Json;
using Generator.Rules;
using Generator.Solver.Completing;
using Newtonsoft.Json.Linq;

namespace Generator.Cli.Changes;

/// <summary>A completed sketch for other programs.</summary>
internal static class CompleteJson
{
    public static JObject Object(ReadSketch read, Completed completed, Scene scene)
    {
        var answer = DraftJson.Object(completed.Routine, completed.Verdict, string.Empty);
        answer.Remove("standing");
        answer["said"] = completed.Said;
        answer["stands"] = completed.Stands;
        answer["proven"] = completed.Gave.Count == 0;
        answer["understood"] = new JArray(read.Understood.Select(u => new JObject { ["line"] = u.Line, ["move"] = u.Move, ["text"] = u.Text, ["as"] = new JArray(u.As) }));
        answer["gave"] = new JArray(GaveText.All(completed, scene).Select(g => new JObject
        {
            ["line"] = g.Line,
            ["move"] = g.Move,
            ["cell"] = g.Cell,
            ["was"] = g.Was,
            ["is"] = g.Is,
            ["rule"] = g.Why?.Rule,
            ["message"] = g.Why?.Message,
        }));
        return answer;
    }
}

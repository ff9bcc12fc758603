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
        answer.Merge(Given(read, completed, scene));
        return answer;
    }

    /// <summary>What was said, understood, and what of it gave.</summary>
    public static JObject Given(ReadSketch read, Completed completed, Scene scene) => new()
    {
        ["said"] = completed.Said,
        ["stands"] = completed.Stands,
        ["proven"] = completed.IsLeast,
        ["understood"] = new JArray(read.Understood.Select(u => new JObject { ["line"] = u.Line, ["move"] = u.Move, ["text"] = u.Text, ["as"] = new JArray(u.As), ["guess"] = u.IsGuess, ["unread"] = new JArray(u.Unread) })),
        ["opened"] = new JArray(completed.Opened.Select(o => new JObject
        {
            ["line"] = completed.Sketch.Moves[o.Move].Line,
            ["move"] = GaveText.Number(completed.Sketch.Moves, o.Move),
            ["row"] = o.Row + 1,
            ["attack"] = completed.Routine.Moves[o.Row].Attack,
        })),
        ["gave"] = new JArray(GaveText.All(completed, scene).Select(g => new JObject
        {
            ["line"] = g.Line,
            ["move"] = g.Move,
            ["cell"] = g.Cell,
            ["was"] = g.Was,
            ["is"] = g.Is,
            ["rule"] = g.Why?.Rule,
            ["measured"] = g.Why?.Measured,
            ["allowed"] = g.Why?.Allowed,
            ["unit"] = g.Why?.Unit,
            ["message"] = g.Why?.Message,
        })),
    };
}

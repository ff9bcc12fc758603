using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Rules.Judging;

/// <summary>Replays a routine and lets every rule speak. Knows no solver.</summary>
public static class Audit
{
    public static Verdict Of(Scene scene, Routine routine)
    {
        var words = new List<Finding>();
        var state = Replay.Open(scene, routine);
        var score = Score.Begin(scene, state, words);
        foreach (var step in Replay.From(scene, state, routine))
        {
            score = score.Observe(scene, step, words);
            state = step.After;
        }

        score = score.Close(scene, state.IsAllys ? state.ForOther(scene.Marks) : state, words);
        var sorted = words.OrderBy(f => f.Count).ThenBy(f => f.Move).ThenByDescending(f => f.Severity).ThenBy(f => f.Rule, StringComparer.Ordinal).ToList();
        return new Verdict(sorted, score.Points, score.PointsByRule);
    }
}

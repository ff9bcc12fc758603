using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Rules.Judging;

/// <summary>Replays a routine and lets every rule speak. Knows no solver.</summary>
public static class Audit
{
    public static Verdict Of(Scene scene, Routine routine)
    {
        var words = new List<Finding>();
        var steps = Replay.Of(scene, routine);
        var state = steps.Count > 0 ? steps[0].Before : Replay.Open(scene, routine.Placements);
        var score = Score.Begin(scene, state, words);
        foreach (var step in steps)
        {
            score = score.Observe(scene, step, words);
            state = step.After;
        }

        score = score.Close(scene, state, words);
        var sorted = words.OrderBy(f => f.Count).ThenBy(f => f.Move).ThenByDescending(f => f.Severity).ThenBy(f => f.Rule, StringComparer.Ordinal).ToList();
        return new Verdict(sorted, score.Points, score.PointsByRule);
    }
}

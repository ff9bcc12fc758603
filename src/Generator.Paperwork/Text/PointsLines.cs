using Generator.Rules;
using Generator.Rules.Judging;

namespace Generator.Paperwork.Text;

/// <summary>Points by rule, and what is known of them.</summary>
internal static class PointsLines
{
    /// <param name="verdict">What the audit said.</param>
    /// <param name="standing">Perfect, proven best or best found; null for a routine that was not drafted.</param>
    /// <param name="scene">Says whether sightline is on.</param>
    public static IEnumerable<string> Of(Verdict verdict, string? standing, Scene scene)
    {
        yield return $"POINTS  {Words.Number(verdict.Points)}{(standing is null ? string.Empty : ", " + standing)}{(verdict.Points > 0 ? " (0 would be perfect)" : string.Empty)}";
        var parts = verdict.PointsByRule.Take(RuleBook.All.Count)
            .Select((points, i) => (Points: points, RuleBook.All[i].Id))
            .Where(p => p.Points > 0)
            .Select(p => $"{p.Id} {Words.Number(p.Points)}");
        foreach (var line in Page.Hang("  ", string.Join(", ", parts)))
        {
            yield return line;
        }

        if (scene.Brief.Cameras.Count == 0)
        {
            yield return "  Sightline is off: the brief names no camera and no audience side.";
        }
    }
}

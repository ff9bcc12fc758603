using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Rules.Rules;

/// <summary>
/// Nothing happens for longer than the brief's longest pause: a point for each half count beyond it, and past
/// <see cref="Pace.DeadAirBreaks"/> the routine is broken. A pause written as a technique is no gap. Before the first move it is broken where the brief says how long the fight is
/// and nobody comes when the first could (<see cref="Scene.LatestFirst"/>).
/// </summary>
public sealed class DeadAir : Rule
{
    public override string Id => "dead-air";

    public override string Title => "Nothing happens for longer than the brief's longest pause.";

    public override Severity Worst => Severity.Broken;

    public override object? Observe(Scene scene, object? memory, Step step, Tally tally)
    {
        var longest = scene.Brief.Pace.LongestPause.Value;
        if (step.Technique is null)
        {
            return null;
        }

        var (first, breaks) = (step.Before.Moves == 0, step.Before.Moves == 0 ? scene.LatestFirst(a => step.Before.Attackers[a].Distance) : Pace.DeadAirBreaks.Value);
        if (step.Quiet > breaks)
        {
            if (tally.Count(Severity.Broken))
            {
                tally.Tell(Told(scene, step, Severity.Broken, 0, breaks));
            }
        }
        else if (!first && step.Quiet > longest && tally.Count(Severity.Rough, step.Quiet - longest))
        {
            tally.Tell(Told(scene, step, Severity.Rough, step.Quiet - longest, longest));
        }

        return null;
    }

    private Finding Told(Scene scene, Step step, Severity severity, int points, int allowed) =>
        At(scene, step, severity, $"Nothing happens for {Words.Counts(step.Quiet)} before this move.") with
        {
            Points = points,
            Measured = step.Quiet / 2m,
            Allowed = allowed / 2m,
            Unit = "counts",
            Advice = "Close the gap, or put a pause of the story there.",
        };
}

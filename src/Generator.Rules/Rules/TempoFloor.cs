using Generator.Domain;
using Generator.Rules.Judging;
using Generator.Rules.Replaying;

namespace Generator.Rules.Rules;

/// <summary>At this tempo neither the technique nor the attack is faster than its fewest seconds, and no move starts before the last is over, let alone before the
/// last began.</summary>
public sealed class TempoFloor : Rule
{
    public override string Id => "tempo-floor";

    public override string Title => "At this tempo the move is not faster than its fewest seconds.";

    public override Severity Worst => Severity.Unsafe;

    public override object? Observe(Scene scene, object? memory, Step step, Tally tally)
    {
        var backwards = step.Start < step.Before.LastStart;
        if (backwards && tally.Count(Severity.Unsafe))
        {
            var (own, last) = (new HalfCounts(step.Start), new HalfCounts(step.Before.LastStart));
            tally.Tell(At(scene, step, Severity.Unsafe, $"Count {own.ToCountText()} stands below count {last.ToCountText()}: by the counts this move starts before the one above it.") with
            {
                Measured = (own - last).Value / 2m,
                Allowed = 0,
                Unit = "counts",
                Advice = "Sort the rows by count, or correct the count; until then the moves are judged in the order in which they stand.",
            });
        }

        if (step.Technique is { } technique)
        {
            JudgeSeconds(scene, step, technique.Name, technique.Length, technique.FewestSeconds, tally);
            if (!backwards && step.Gap < 0 && tally.Count(Severity.Unsafe))
            {
                tally.Tell(At(scene, step, Severity.Unsafe, $"{Words.Cap(technique.Name)} starts {Words.Counts(-step.Gap)} before the move before it is over.") with
                {
                    Measured = step.Gap / 2m,
                    Allowed = 0,
                    Unit = "counts",
                    Advice = $"Start it at count {new HalfCounts(step.Before.Time).ToCountText()} or later.",
                });
            }
        }

        if (step.Attack is { } attack)
        {
            JudgeSeconds(scene, step, attack.Name, attack.Length, attack.FewestSeconds, tally);
        }

        return null;
    }

    private void JudgeSeconds(Scene scene, Step step, string name, HalfCounts length, decimal fewest, Tally tally)
    {
        var seconds = scene.Brief.Tempo.SecondsIn(length);
        if (seconds < fewest && tally.Count(Severity.Unsafe))
        {
            tally.Tell(At(scene, step, Severity.Unsafe, $"At {scene.Brief.Tempo.CountsPerMinute} counts a minute {Words.Low(name)} has {Words.Seconds(seconds)}; it needs {Words.Seconds(fewest)}.") with
            {
                Measured = seconds,
                Allowed = fewest,
                Unit = "s",
                Advice = "Slow the tempo, or choose something shorter.",
            });
        }
    }
}

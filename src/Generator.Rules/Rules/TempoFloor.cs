using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Rules.Rules;

/// <summary>No move starts before the last one is over, which lasts as long as its fewest seconds want at this tempo, let alone before the last one began.</summary>
public sealed class TempoFloor : Rule
{
    public override string Id => "tempo-floor";

    public override string Title => "At this tempo every move has its fewest seconds before the next one starts.";

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

        if (step.Technique is { } technique && !backwards && step.Gap < 0 && tally.Count(Severity.Unsafe))
        {
            tally.Tell(Overlap(scene, step, technique));
        }

        return null;
    }

    private Finding Overlap(Scene scene, Step step, Technique technique)
    {
        var (tempo, over) = (scene.Brief.Tempo, new HalfCounts(step.Before.Time));
        var early = $"{Words.Counts(-step.Gap)}, {Words.Seconds(tempo.SecondsIn(new HalfCounts(-step.Gap)))},";
        return At(scene, step, Severity.Unsafe, $"{Words.Cap(technique.Name)} starts {early} before the move before it is over.") with
        {
            Measured = step.Gap / 2m,
            Allowed = 0,
            Unit = "counts",
            Advice = $"Start it at count {over.ToCountText()} or later: at {tempo.CountsPerMinute} counts a minute the move before it lasts until then.",
        };
    }
}

using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Rules.Rules;

/// <summary>The move starts from the stance the last one ended in, or the gap allows the change.</summary>
public sealed class FlowStance : Rule
{
    public override string Id => "flow-stance";

    public override string Title => "Each move starts from the stance the last one ended in, or the gap allows the change.";

    public override Severity Worst => Severity.Broken;

    public override object? Observe(Scene scene, object? memory, Step step, Tally tally)
    {
        if (step.Technique is { } technique && step.StanceTime > Math.Max(0, step.Gap) && tally.Count(Severity.Broken))
        {
            tally.Tell(Told(scene, step, technique));
        }

        return null;
    }

    private Finding Told(Scene scene, Step step, Technique technique)
    {
        var from = scene.Book.Stances.NameOf(step.Before.Stance);
        if (step.Row.Stance is { } said && !technique.Starts.Contains(said))
        {
            return At(scene, step, Severity.Broken, $"The move says {scene.Book.Stances.NameOf(said)}, and {Words.Low(technique.Name)} does not start from it.") with
            {
                Advice = "Leave the stance out, or choose a technique that starts from it.",
            };
        }

        if (step.StanceTime >= StanceTable.Never)
        {
            return At(scene, step, Severity.Broken, $"{Words.Cap(technique.Name)} cannot start from {from}.") with
            {
                Advice = "Choose a technique that starts from this stance, or let the move before end in another.",
            };
        }

        var to = scene.Book.Stances.NameOf(step.StanceStart);
        return At(scene, step, Severity.Broken, $"From {from} to {to} takes longer than the gap before {Words.Low(technique.Name)}.") with
        {
            Measured = step.Gap / 2m,
            Allowed = step.StanceTime / 2m,
            Unit = "counts",
            Advice = $"Leave {new HalfCounts(step.StanceTime).InWords} before this move, or choose a technique that starts from {from}.",
        };
    }
}

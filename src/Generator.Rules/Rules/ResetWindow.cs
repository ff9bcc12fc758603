using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Rules.Rules;

/// <summary>No attack lands before its attacker could be there: fallen, up again, arrived where the last move sent them, back at striking distance, and walked round where need be.</summary>
public sealed class ResetWindow : Rule
{
    public override string Id => "reset-window";

    public override string Title => "No attack lands before the attacker's threat time.";

    public override Severity Worst => Severity.Unsafe;

    public override object? Observe(Scene scene, object? memory, Step step, Tally tally)
    {
        if (step.Attack is not { } attack || step.SoonestContact is not { } soonest)
        {
            return null;
        }

        if (step.Contact < soonest && tally.Count(Severity.Unsafe))
        {
            var who = Words.Name(scene, step.Row.Attacker);
            tally.Tell(At(scene, step, Severity.Unsafe, $"{who}'s {Words.Low(attack.Name)} would land at count {new HalfCounts(step.Contact).ToCountText()}; {who} cannot be there before count {new HalfCounts(soonest).ToCountText()}.") with
            {
                Measured = (step.Contact / 2m) + 1,
                Allowed = (soonest / 2m) + 1,
                Unit = "count",
                Advice = step.Index == 0 && soonest - step.Contact > 0 && step.Before.Attackers[step.Row.Attacker] is { Entrance: <= 0, ReadyAt: < 0 }
                    ? $"Nobody sets off before the count-in of {Words.Counts(scene.Settle.LeadInMost.Value)}: let {who} open nearer, or the first move start {Words.Counts(soonest - step.Contact)} later."
                    : $"Let {who} come {Words.Counts(soonest - step.Contact)} later, start nearer, or take a reaction before it that is over sooner.",
            });
        }

        return null;
    }
}

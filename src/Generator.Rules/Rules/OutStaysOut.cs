using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Rules.Rules;

/// <summary>An attacker who is out does nothing more, and nothing more is done to them.</summary>
public sealed class OutStaysOut : Rule
{
    public override string Id => "out-stays-out";

    public override string Title => "An attacker who is out does nothing more.";

    public override Severity Worst => Severity.Broken;

    public override object? Observe(Scene scene, object? memory, Step step, Tally tally)
    {
        if (step.HasTarget && step.Before.Attackers[step.Row.Attacker] is { Posture: Posture.Out } target && tally.Count(Severity.Broken))
        {
            var who = Words.Name(scene, step.Row.Attacker);
            tally.Tell(At(scene, step, Severity.Broken, $"{who} has been out since count {new HalfCounts(target.OutAt).ToCountText()}.") with
            {
                Advice = "Give this move to another attacker, or let the earlier finish be a strike that leaves them in.",
            });
        }

        return null;
    }
}

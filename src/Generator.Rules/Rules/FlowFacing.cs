using Generator.Domain;
using Generator.Rules.Replaying;

namespace Generator.Rules.Rules;

/// <summary>The target lies in the technique's window after the turn that the gap allows.</summary>
public sealed class FlowFacing : Rule
{
    public override string Id => "flow-facing";

    public override string Title => "The target lies in the technique's window after the turn that the gap allows.";

    public override Severity Worst => Severity.Broken;

    public override object? Observe(Scene scene, object? memory, Step step, Tally tally)
    {
        if (step.HasTarget && step.Technique is { } technique && Math.Abs(step.TurnMade) > step.TurnAllowed && tally.Count(Severity.Broken))
        {
            tally.Tell(Told(scene, step, technique));
        }

        return null;
    }

    private Finding Told(Scene scene, Step step, Technique technique)
    {
        var turn = Math.Abs(step.TurnMade) * Bearing.DegreesPerHalfHour;
        var allowed = step.TurnAllowed * Bearing.DegreesPerHalfHour;
        var gripped = step.TurnAllowed < scene.Settle.TurnFor(step.Gap);
        var (hero, target) = (scene.Brief.Hero.Name, Words.Name(scene, step.Row.Attacker));
        return At(scene, step, Severity.Broken, $"{hero} would have to turn {turn}° before {Words.Low(technique.Name)} finds {target}; {(gripped ? "the grip" : "the gap")} allows {allowed}°.") with
        {
            Measured = turn,
            Allowed = allowed,
            Unit = "degrees",
            Advice = gripped ? "Escape first, or choose a technique for a target on that side." : "Leave a longer gap, turn in the move before, or choose a technique for a target on that side.",
        };
    }
}

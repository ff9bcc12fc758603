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
        if ((step.HasTarget || step.Travels >= 0) && step.Technique is { } technique && Math.Abs(step.TurnMade) > step.TurnAllowed && tally.Count(Severity.Broken))
        {
            tally.Tell(Told(scene, step, technique));
        }

        if (step is { Travels: >= 0, HasTarget: true, Technique.Travel: { } travel } && !travel.Heads.Contains(new Bearing(step.FacingStart).To(new Bearing(step.Heading))) && tally.Count(Severity.Broken))
        {
            tally.Tell(HeadsElsewhere(scene, step));
        }

        return null;
    }

    private Finding HeadsElsewhere(Scene scene, Step step)
    {
        var (hero, to) = (scene.Brief.Hero.Name, scene.Brief.Marks[step.Travels].Name);
        var clock = new Bearing(step.Heading - step.FacingStart).InWords;
        return At(scene, step, Severity.Broken, $"{Words.Cap(step.Technique!.Name)} does not lead to {to}, which lies at {hero}'s {clock} when it starts.") with
        {
            Advice = "Let the partner come from another bearing, or choose another way to that mark.",
        };
    }

    private Finding Told(Scene scene, Step step, Technique technique)
    {
        var turn = Math.Abs(step.TurnMade) * Bearing.DegreesPerHalfHour;
        var allowed = step.TurnAllowed * Bearing.DegreesPerHalfHour;
        var gripped = step.TurnAllowed < scene.Settle.TurnFor(step.Gap);
        var (hero, target) = (scene.Brief.Hero.Name, step.HasTarget ? Words.Name(scene, step.Row.Attacker) : scene.Brief.Marks[step.Travels].Name);
        return At(scene, step, Severity.Broken, $"{hero} would have to turn {turn}° before {Words.Low(technique.Name)} finds {target}; {(gripped ? "the grip" : "the gap")} allows {allowed}°.") with
        {
            Measured = turn,
            Allowed = allowed,
            Unit = "degrees",
            Advice = gripped ? "Escape first, or choose a technique for a target on that side." : "Leave a longer gap, turn in the move before, or choose a technique for a target on that side.",
        };
    }
}
